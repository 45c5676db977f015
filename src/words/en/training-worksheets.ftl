## Worksheets

text-sheet-name = Name
text-sheet-date = Date
text-sheet-score = Score
text-sheet-task = Mark one choice for each exercise. Show your work.
text-sheet-working = Working
text-sheet-edition = NFPA 70, { $edition } edition, { $units }
text-sheet-us = inches and cubic inches
text-sheet-si = millimetres and cubic centimetres
text-sheet-key = Answer key
text-sheet-other-editions = Under other editions:
