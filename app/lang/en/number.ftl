### What stands around numbers. Spaces that keep number and unit on one line are written out.

# "27.3 to 30.1 kW": the unit stands in the second one.
range = { $low }{ "\u00A0" }to{ "\u00A0" }{ $high }
more-than-100-hours = more than 100{ "\u00A0" }h
rpm = rpm
tons = tons
tons-per-hour = tons/h
