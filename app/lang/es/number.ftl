### No native speaker has read this yet.

range = { $low }{ "\u00A0" }a{ "\u00A0" }{ $high }
hundred-hours = 100{ "\u00A0" }h o más
rpm = rpm
tons = toneladas cortas
tons-per-hour = toneladas cortas/h
