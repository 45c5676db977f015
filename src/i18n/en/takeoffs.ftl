## Takeoffs

text-code-ambiguous = A text that can be read in more than one way. What it could mean is given.
fault-table-not-understood = { $given } is not understood here.
fault-table-ambiguous = { $given } can be read in more than one way. Write which is meant.
fault-table-unit = { $given } is in another unit than the row, which has { $unit }.
fault-table-quote = A quote is opened in this line and not closed, or something stands behind a closed one. A line break cannot stand in a cell.
fault-table-columns = The line has { $cells } cells, the header { $columns } columns.
fault-table-other-check = { $column } does not belong to a row for { $check }.
fault-table-raceway = The kind of raceway is missing.
fault-table-not-utf8 = The line is not UTF-8: byte { $byte } cannot stand where it does.
fault-table-no-header = The table has no header: its first line names the columns.
fault-table-unknown-column = No column is named { $column }.
fault-table-column-twice = { $column } names a column that the header has already.
problem-detail-takeoff-media-type = { $given } is none of application/json, application/x-ndjson and text/csv.
problem-detail-takeoff-not-acceptable = The Accept header admits none of application/json, application/x-ndjson and text/csv.
problem-detail-takeoff-pause = No whole line arrived within { $seconds } seconds. What had arrived was answered.
problem-detail-line-too-long = The line is longer than { $most } bytes.
text-takeoff-title = Whole takeoffs
text-takeoff = Many checks at once. Each item names its check and carries that check's request, and is answered as the operation of that check answers it, byte for byte. An item that is wrong never stops the others: a problem with its line stands in the place of its answer. Answers come in the order of the items, as JSON, line by line or as a table, whichever is asked for with Accept; without it in the form that was sent. Lines are answered while they arrive, in bounded memory however many there are, so read while you send; the service waits for a caller that reads slowly, and gives up one from which no whole line arrives for as long as a body may take. The last record is a summary that accounts for every line. explain is full unless it says otherwise; in a table there is no proof.
text-takeoff-body = The items. As application/json up to 16 MiB and 50,000 items, all read before the first is answered; as application/x-ndjson or text/csv any number of lines of up to 1 MiB each.
text-takeoff-answered = The answers in order, problems in the places of those that there are not, and the summary.
text-takeoff-lines = One item a line, each a TakeoffItem as JSON text without line breaks. Blank lines are counted, and answered with nothing.
text-takeoff-answer-lines = One record a line: for each item, in order, a TakeoffRecord; then an object whose only member is summary, a TakeoffSummary. A record with the member check is an answer, one with the member type a problem. A stream without a summary is not whole.
text-takeoff-table = A header, then an outlet box or a raceway a line (RFC 4180, but a line break cannot stand in a cell). Columns, in any order and case: reference, your own mark; check, box or raceway, which else the filled columns decide; edition and units, as in a request; box, a standard metal box such as square 4 x 2-1/8 or 3x2x3-1/2; gangs; marked_volume and material of a box by its mark; ring_volume, extension_volume and cover_volume, as marked; cables, such as 2 x 12-2 NM-B w/g; conductors, in a box such as 4 x 12 spliced, in a raceway such as 3 x 12 THHN or 1 x 8 bare solid; grounds, such as 2 x 12 or 12 isolated; devices, such as receptacle 12 or 2 x switch 14; clamps, internal ones, yes, no or how many; fittings, stud or hickey; raceway, such as EMT or PVC schedule 40; trade_size, such as 1/2, 0.5, ½ or 16 mm; length and nipple; insulation, of conductors that name none. Several things in a cell are separated by a semicolon, a comma or a plus, and their number stands before an x. 12, #12 and 12 AWG are the same. What could mean two things is refused with both, such as 4 x 1-1/2, which is a square box and an octagonal one. In problems a pointer names the column.
text-takeoff-answer-table = A header, then a row for each record, which its column record names: answer or problem, in the order of the items, with line, reference, check, verdict, what is required and available with its unit, what the job needs, and what was found or is wrong; then the summary, a count a row: summary_lines, summary, summary_check, summary_rule, summary_bill, summary_prefix.
