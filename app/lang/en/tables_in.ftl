### The yard's lists as tables for spreadsheets.

let-go = Let go to open it: a yard or a comparison (JSON), or a table (CSV).
title = Tables for spreadsheets
tables =
    The yard's lists for a spreadsheet, as CSV; changed, they open here like a yard file. A template has every
    column and an invented row to start from.
machines = Machines
    .small = machines
implements = Implements
    .small = implements
kits = Kits
    .small = kits
save-list = { $list } (CSV)
template-of = Template: { $list }

which-list = It's a table of
which-how = What the yard has and the table doesn't
merge = Stays
replace = Goes
take-over = Take over
leave = Leave it
row = Row
entry = Entry
becomes = What happens
faults = What is wrong with it
heading = What { $file } would change

asks-list = Its headers suit several lists: say which it is of. Nothing in the yard has changed yet.
asks-mark = Its numbers can be read in two ways: say which is meant. Nothing in the yard has changed yet.
has-faults =
    It can't be taken over: it has { $faults ->
        [one] one fault
       *[other] { $faults } faults
    }. The yard stays as it is.
ready = { $counts }. Nothing in the yard has changed yet.
# Entries of a list.
counts = { $new } new, { $changed } changed, { $unchanged } unchanged, { $removed } removed

first-list = First say which list it is of.
first-mark = First say how its numbers are meant.
first-mend = Mend its faults in the spreadsheet, save it and open it again.
changes-nothing = It changes nothing.

which-mark = Row { $row }, { $column } says { $cell }. Which number is that?
mark-decimals = { $number }: the mark stands before decimals
mark-thousands = { $number }: the mark parts thousands

# What becomes of an entry.
becomes-new = new
becomes-changed = changed: { $columns }
becomes-unchanged = unchanged
removed-are = Removed: { $names }.
rows-more = and { $number } more
faults-more = And { $number } more, once these are mended.
took-list = { $file } is in the yard. { $list }: { $counts }.
several-files = { $number } files at once are too many: open one after the other.
