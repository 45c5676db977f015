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

## Teaching over HTTP

text-tag-teaching = Exercises, what is wrong with an answer, sheets to print.
problem-detail-not-acceptable-html = The Accept header admits no text/html.
fault-unknown-quantity = The check is not asked for this figure.
fault-no-answer = Give an answer, a tally, or both.
fault-no-tally = The answer of this check has no tally.
fault-too-many-lines = A tally has at most 50 lines.
fault-request-or-exercise = Give either a check with its request, or an exercise.
fault-not-taught = No such check is taught.
