### No native speaker has read this yet.

range = { $low }{ "\u00A0" }à{ "\u00A0" }{ $high }
hundred-hours = 100{ "\u00A0" }h ou plus
rpm = tr/min
tons = tonnes courtes
tons-per-hour = tonnes courtes/h
