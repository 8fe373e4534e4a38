### What the yard's editor says.

## Steps, and the yard as a file

undo = Undo
redo = Redo
undone = Undone: { $deed }
redone = Done again: { $deed }
steps = Steps
save = Save the yard as a file
to-demo = Back to the demo yard…
to-demo-sure =
    This puts the demo yard in place of the one here. Undo brings yours back as long as this page stays open;
    save it as a file to keep it for longer.
yes-demo = Put the demo yard here
no-demo = Leave the yard as it is
kept = Changes are kept in this browser.
not-kept = This browser doesn't keep changes: save the yard as a file.
held = Changes aren't kept until you have decided above.

# What a step did, behind "Undo:" and the like.
deed-own = { $field } of the yard
deed-field = { $field } of { $name }
deed-added = adding { $name }
deed-removed = removing { $name }
deed-moved = moving { $name }
deed-opened = opening { $file }
deed-took-over = taking over { $file }

## Lists

own = The yard itself
lists = What the yard has
search = Search by name
none-found = Nothing of that name.
choose = Choose an entry of the list, or add one.
add-machine = Add a machine
add-implement = Add an implement
add-kit = Add a kit
new-machine = New machine
new-implement = New implement
new-kit = New kit
copy-of = { $name } (copy)
more-entries = { $count } more: search by name.
so-many-to-mend = { $count } to mend
fields-not-known = not known: { $fields }

## An entry's form

copy = Copy
remove = Remove
earlier = Move up
later = Move down
to-mend-first = To mend before it takes part in comparisons
own-to-mend = To mend: until then these are left out
more-figures = Further figures
needed = needed
not-known-yet = Not known
yes = Yes
no = No
nothing-known = nothing entered
range = Give a range
one-figure = One figure
add-one = Add…
leave-out = Leave it out
take-away = Take this field away
unclear = This isn't one clear number. Write it without marks between thousands: 1234 or 1.234.
assumed = assumed: { $number }
stands-elsewhere = Stands elsewhere already.
# One of a list's groups: "Hydraulic outlets, outlet 2".
item-at = { $group }, { $item } { $place }

## Nothing to compare

nothing-to-compare = There is nothing to compare yet
to-editor = Edit the yard
lacks-mending = { $name } has something to mend first ({ $faults }). What is to be done stands at its entry.
lacks-machine = The yard has no machine that can be compared. Add one, or mend one of those that it has.
lacks-implement = The yard has no implement that can be compared. Add one, or mend one of those that it has.
add-one-of = Add: { $item }
numbered = { $item } { $place }
