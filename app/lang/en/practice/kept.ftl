### A learner's own record.

lead = This is for you alone. It stays in this browser, on this device, and goes nowhere.
empty = Nothing is kept yet. It begins with your first case.
export = Save as a file (JSON)
erase = Erase it
    .ask = Erase all of it? It can't be brought back.
    .yes = Yes, erase it
    .no = Keep it
erased = Erased.

## How far an idea has come

not-met = not met yet
taking-shape = taking shape
getting-there = getting there
firm = firm: you know it, and you know that you do
# So many cases lie behind it, and the next one comes with so much help.
behind = { $cases }; next: { $help }

## Why the record isn't kept

trouble-closed =
    This browser doesn't let the page keep anything here. You can practise all the same; how it goes is
    forgotten when you leave, unless you save it as a file.
trouble-full =
    This browser has no room left to keep your last answer. Save it as a file, or free some room in the
    browser's settings.
trouble-damaged =
    What this browser kept can't be read any more. It is left as it is, and new answers aren't kept. Erase it
    to begin anew.
trouble-newer =
    A newer version of this page kept what is here. Reload the page to use it; until then it is left as it
    is, and new answers aren't kept.
