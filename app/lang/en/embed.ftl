### A yard from an address, and ways round what a frame keeps back.

try-again = Try again
use-demo = Use the demo yard
not-loaded = The yard couldn't be loaded
of-address = This yard comes from an address and is loaded anew each time: your changes last as long as this page stays open. Save the yard as a file to have it again.
anew = Changes last as long as this page stays open: save the yard as a file.
loading = The yard is being loaded from { $address } …
unreachable = It can't be reached: there is no network, no such address, or its host doesn't share it with other pages.
too-slow = Its host hasn't answered in time.
moved = Its host leads on to an address that isn't safe to load from.
nothing-there = There is nothing at this address.
refused = Its host refused it, with number { $status }.
too-large = It is larger than any yard.
no-yard = It isn't a yard that can be used:
kept-since = The yard's address can't be reached. This is the yard as it was when this browser last loaded it, on { $day }.
opened = { $file } is open for as long as this page is. It stays on this device, and this browser doesn't keep it.
open-in-tab = Open this page in a tab of its own
tab-refused = No tab has opened: copy the address into a new one.
address-to-copy = The address, to copy
text-to-copy = The file's text, to copy
