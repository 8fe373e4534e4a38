### What stands around numbers. Spaces that keep number and unit on one line are written out.

# "27.3 to 30.1 kW": the unit stands in the second one.
range = { $low }{ "\u00A0" }to{ "\u00A0" }{ $high }
hundred-hours = 100{ "\u00A0" }h or more
rpm = rpm
tons = tons
tons-per-hour = tons/h
