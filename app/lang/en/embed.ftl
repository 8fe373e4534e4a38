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

## What is wrong with the host's options

for-host =
    For whoever put this page here: { $options ->
        [one] { $options } option can't be used
       *[other] { $options } options can't be used
    }
option-twice = { $option } ({ $found }) is there more than once. The first one counts.
option-empty = { $option } says nothing. Leave it out instead.
option-unknown = { $option } ({ $found }): the page has no option of this name.
option-no-address =
    { $option } ({ $found }) must be an address that begins with https://, or one of this page's own host.
    For trying, http://localhost will do. The demo yard or the reader's own is shown.
option-no-currency = { $option } ({ $found }) must be three capital letters: its code in ISO 4217, such as EUR or USD.
option-no-origin =
    { $option } ({ $found }) must be an origin such as https://www.example.com, without a path and without a
    slash at its end. Nobody is told the page's height.
option-none-of = { $option } ({ $found }) must be one of: { $words }. In small letters, as written here.
option-not-spoken =
    { $option } ({ $found }) must be one of: { $tags }. The page speaks the reader's own language where it
    can, else English.
option-not-in-yard = { $option } ({ $found }): the yard has none of this identifier, so the reader may choose.
option-no-colour =
    { $option } ({ $found }) must be a colour: by name, as #rrggbb, rgb(…) or hsl(…), and not translucent. The
    page's own colour stays.
option-contrast =
    { $option } ({ $ink } on { $ground }: { $contrast } to 1) must be { $least } to { $most } to 1. What is
    written there must be readable: the page's own colour stays.
