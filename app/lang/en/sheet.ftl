### The page to take home.

open = Page to take home
back = Back to the comparison
print = Print or save as PDF
sideways = Slide the picture sideways to see all of it; on paper it is whole.
cant-print = This frame keeps the printer closed. Print from a tab of its own, or from the browser's own menu.

outcome-heading = How it comes out
need = The job needs { $need } at the rotor ({ $range }). The engine has { $net } net.
# The seat is a part of a sentence: "on the loader".
outcome = { $route }, { $seat }: { $power } ({ $range }) arrive at { $speed }. { $standing }.

ledger-heading = Where it goes
lost = lost
passed-on = passed on

fit-heading = To see to before it runs
fits = All that is known of it fits.
buy-heading = What it takes beside the machine
with-motor = { $implement }, with hydraulic motor
with-shaft = { $implement }, with input shaft
fitting = Fitting
together = Together
ask-heading = Still to ask
# A count: languages may choose a form by it.
more = and { $count } more, by the link

code = This comparison, live:
no-code = A page from a disk has no address to give; make this page from the dealer's website to get a code.
long-code = The address is too long for a code: ask the dealer for the link.
foot = Reckoned by Farend, which replaces neither manuals nor trained people.
invented = Invented demo data.
