### No native speaker has read this yet.

range = { $low }{ "\u00A0" }a{ "\u00A0" }{ $high }
more-than-100-hours = más de 100{ "\u00A0" }h
rpm = rpm
tons = toneladas cortas
tons-per-hour = toneladas cortas/h
