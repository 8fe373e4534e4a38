# The foot of the page, and the offer of a newer version.
newer = A new version of this page is ready. Nothing reloads before you say so.
loses = This browser doesn't keep your changes to the yard: reloading would lose them. Save the yard
    as a file first, and open it again afterwards.
reload = Reload now
    .all-the-same = Reload all the same
later = Later
version = Version { $number }
version-of-build = Version { $number } ({ $build })
kept = This browser keeps the page: it opens without network too.
refused = This browser doesn't keep the page: it takes a network to open it.
licences = Licences of what this is built with
