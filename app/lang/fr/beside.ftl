### No native speaker has read this yet.

title = À côté d'une autre machine
other = L'autre machine
none = aucune
note =
    Les deux avec le même outil et le même travail, au même lieu ; les régimes, débits et pressions de l'autre
    machine tels que le parc les donne.
price-of = Prix, { $machine }
arrives-and-job = { $power } : { $standing } ; le travail, { $time }

## Clauses of one sentence

brings-more = par sa meilleure voie, { $other } apporte { $power } de plus que { $own }
brings-less = par sa meilleure voie, { $other } apporte { $power } de moins que { $own }
job-takes = le travail prend { $other } au lieu de { $own }
costs-more = cela coûte { $amount } de plus
costs-less = cela coûte { $amount } de moins
