### No native speaker has read this yet.

title = Al lado de otra máquina
other = La otra máquina
none = ninguna
note =
    Las dos con el mismo apero y el mismo trabajo, en el mismo lugar; los regímenes, caudales y presiones de la otra
    máquina, como los tiene el patio.
price-of = Precio, { $machine }
arrives-and-job = { $power }: { $standing }; el trabajo, { $time }

## Clauses of one sentence

brings-more = por su mejor vía, { $other } aporta { $power } más que { $own }
brings-less = por su mejor vía, { $other } aporta { $power } menos que { $own }
job-takes = el trabajo tarda { $other } en vez de { $own }
costs-more = cuesta { $amount } más
costs-less = cuesta { $amount } menos
