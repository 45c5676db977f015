## Grading

text-grade-right = The answer is right.
text-grade-explained = The answer is not right. What is listed gives exactly this figure; it may have come about in another way.
text-grade-unexplained = The answer is not right. Neither a known misconception, nor two of them together, nor a slip gives this figure.
text-grade-no-figure = The rules ask no such figure here, or it is not determined.
text-grade-misconception = This misconception gives exactly this figure.
text-grade-pair = These two misconceptions together give exactly this figure.
text-slip-converted = This is the right figure, converted to another unit.
text-slip-other-column = This is the right figure in the other system of units, as the code itself prints it.
text-slip-wrong-unit = The number is right, the unit is not.
text-slip-number-of-other-unit = This number is right in the other unit.
text-slip-rounded-up = This is the right figure, rounded up.
text-slip-rounded-down = This is the right figure, rounded down.
text-slip-digits-exchanged = Two digits of the right figure are exchanged.
text-slip-product = The allowances are right, what they come to is not.
text-slip-sum = The lines of the tally do not add up to the answer.
