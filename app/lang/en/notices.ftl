### Messages about files and links, and about the yard that the browser keeps.

bad-file =
    { $file } can't be used: { $faults ->
        [one] it has one fault
       *[other] it has { $faults } faults
    }. The yard that was open stays open. Mend these and open it again.
unreadable-file = { $file } couldn't be read from the disk. The yard that was open stays open.
opened-yard =
    { $file } is open, and opens again with this page: this browser keeps it. It stays on this device. “Edit
    yard” can take this step back.
opened-comparison =
    { $file } is open, with the yard that it was saved in, which this browser keeps. It stays on this device.
    “Edit yard” can bring back the yard before.
bad-link = { $fault } What you see is the start of this yard.
    .damaged = The link is damaged: perhaps a part was cut off when it was copied.
    .newer = The link was made by a newer version of this page. Reload the page first.
    .too-long = The link is longer than any that this page makes.
missing-from-yard =
    The link names what this yard doesn't have, or has with faults: { $missing }. { $elsewhere } The rest is
    shown.
    .in-demo = The demo yard has it.
    .in-another = If it comes from another yard, open that yard's file.
bad-settings = The link's settings don't suit this machine, so its own figures are shown.
cant-save = This browser doesn't let the page save a file here. Open the page in a tab of its own and try again.
saved-from-frame = { $file } was handed over, but the page around this one may keep files back. If none has come, take it from here:
cant-draw =
    This browser doesn't make pixels of the picture here. Save it as SVG: it shows the same, sharp at any
    size.
no-ledger = { $route } can't be hooked up here, so it has no ledger. Open another route and save its ledger.

mend-here = Open it all the same, and mend it here
open-demo = Open the demo yard for this link
save-yard = Save this tab's yard as a file
save-kept = Save what was kept as a file
take-other = Take over the other tab's
take-kept = Open the yard that is kept
keep-mine = Keep mine
overwrite = Keep this yard in its place

denied =
    This browser doesn't let the page keep anything here: your changes last as long as this page stays open.
    Save the yard as a file to have it again.
full =
    The room that this browser gives is used up: your last changes aren't kept, what was kept before still is.
    Save the yard as a file to have it again.
set-aside =
    What this browser had kept of your yard is damaged and can't be read. It was set aside and not thrown
    away; the demo yard is open. If you have saved your yard as a file, open it.
held =
    This browser keeps a yard that this version of the page can't read, probably from a newer one. It stays as
    it is, so nothing that you change here is kept. Reload the page first; it may be an old one.
other-changed =
    The yard was changed in another tab. Until you say which of the two counts, this tab's changes aren't
    kept.
other-went-back =
    Another tab went back to the demo yard. Until you say which of the two counts, this tab's changes aren't
    kept.
passed-over =
    The demo yard is open. The yard that this browser keeps is still there as it was; until you say which of the
    two counts, nothing that you change here is kept.
