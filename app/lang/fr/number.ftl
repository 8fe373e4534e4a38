### No native speaker has read this yet.

range = { $low }{ "\u00A0" }à{ "\u00A0" }{ $high }
more-than-100-hours = plus de 100{ "\u00A0" }h
rpm = tr/min
tons = tonnes courtes
tons-per-hour = tonnes courtes/h
