### No native speaker has read this yet.

title = Ce que cela coûte
lead =
    Vos propres prix, gardés dans le lien. Sans prix, rien n'est dit du coût ; saisissez 0 là où quelque chose ne
    coûte rien.
currency = Monnaie, trois lettres (EUR, USD …)
other-currency = Les prix du parc sont en { $currency } : à côté d'une autre monnaie, ils ne comptent pas.
currency-refused = Saisissez trois lettres, ou rien.
hour = Une heure de travail
kit = Kit
variant = Outil pour cette voie
fitting = Montage
total = À l'achat
per-power-unit = Pour chaque { $unit }
job = Faire le travail
pays = Face au meilleur arbre
prices = 0 ou plus, jusqu'à un milliard.
note =
    Faire le travail, c'est son temps au prix d'une heure, sans compter demi-tours et arrêts. Une voie plus chère
    est rentabilisée après tant d'heures de son propre travail, face à la meilleure voie par arbre.

## When a route has paid for itself

at-once = rentable tout de suite
after = rentable après { $time } de travail
ahead-for = moins chère, plus lente : gagnante pendant { $time } de travail
never = jamais rentable : ni moins chère ni plus rapide
