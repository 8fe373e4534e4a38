### No native speaker has read this yet.

why = Pourquoi
delivered-low = Arrive, bas
delivered-likely = Arrive, probable
delivered-high = Arrive, haut
need-low = Besoin, bas
need-likely = Besoin, probable
need-high = Besoin, haut
part = De la puissance nette du moteur
rotor = Régime du rotor
kit = Kit
seat = Place de l'outil
hook-up = Pour l'atteler
job = Travail
time-quickest = Temps, le plus court
time-likely = Temps, probable
time-slowest = Temps, le plus long
price-kit = Prix du kit
price-variant = Prix de l'outil pour cette voie
price-fitting = Prix du montage
price-total = Prix au total
takes-speed = Prend : régime
takes-torque = Prend : couple
takes-flow = Prend : débit
takes-pressure = Prend : pression
passes-on-speed = Transmet : régime
passes-on-torque = Transmet : couple
passes-on-flow = Transmet : débit
passes-on-pressure = Transmet : pression

## How many items come to a judgement, and which

pass = Points qui conviennent
    .which = Lesquels conviennent
advice = Points avec avis
    .which = Lesquels ont un avis
question = Points à demander
    .which = Lesquels sont à demander
stop = Points qui ne conviennent pas
    .which = Lesquels ne conviennent pas

limit = limite : { $limit }
