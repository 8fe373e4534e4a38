### The whole yard.

how-read = Read the yard
reading-whole = Every machine with every implement
reading-machines = What drives this implement?
reading-implements = What can this machine drive?

by-route = Route
best-route = The best that fits
least = Standing at least
any-standing = Any, also none
machines = Machines
implements = Implements
all = All
from = Engine from
to = Engine to
a-power = a power of the engine
kits = Kits
with-kit = With any kit of the yard
as-it-stands = Only what is there already
sorted-by = Sorted by
by-best = the best first
by-name = name
by-size = size, largest first
grouped = By kind
filters = Filter and sort
back = Show all again
stop = Stop
go-on = Go on
save = Save what is shown (CSV)
print = Print what is shown
cant-print = This browser doesn't print from here. Open the page in a tab of its own and print it there.
too-large = That is more than fits on paper. Narrow it by the filters, or save it as a table.
nothing = Nothing of this yard is shown: every pair is filtered out.
empty = The yard has no machine or no implement yet. Add them under “Edit yard”, or open a yard file.
note =
    Each pair is reckoned with its likely figures, at the engine speed of its PTO, with the height above the
    sea and the temperatures set. How warm the oil gets and the ranges of the figures are seen when a pair is
    opened. Of the routes of a pair that fit, the one with the best standing is shown; of equals the one of
    which less must be asked, then the one that delivers more. Delivered over needed: 1.00 is just enough.
    “?”: ask first, something that must fit isn't known.
ask-first = ask first
asks-yes = yes
asks-no = no
progress = { $done } of { $all } machines reckoned
part-shown = { $machines } of { $all-machines } machines, { $implements } of { $all-implements } implements

## Columns of the table

kind-of-machine = Kind of machine
kind-of-implement = Kind of implement
ratio = Delivered over needed
delivered = Delivered
needed = Needed

## Kinds and routes where there is little room

skid-steer = Skid steer
other = Other
rear-shaft = Rear shaft
mid-shaft = Mid shaft
turned-forward = Turned forward
own-hydraulics = Own hydraulics
pump-pack = Pump pack
