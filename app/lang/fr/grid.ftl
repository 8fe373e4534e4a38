### No native speaker has read this yet.

how-read = Lire le parc
reading-whole = Chaque machine avec chaque outil
reading-machines = Qu'est-ce qui entraîne cet outil ?
reading-implements = Que peut entraîner cette machine ?

by-route = Voie
best-route = La meilleure qui convient
least = Verdict minimal
any-standing = Tous, même aucun
machines = Machines
implements = Outils
all = Tous les types
from = Moteur à partir de
to = Moteur jusqu'à
a-power = une puissance du moteur
kits = Kits
with-kit = Avec n'importe quel kit du parc
as-it-stands = Seulement ce qui est déjà là
sorted-by = Tri
by-best = le meilleur d'abord
by-name = nom
by-size = taille, la plus grande d'abord
grouped = Par type
filters = Filtrer et trier
back = Tout montrer de nouveau
stop = Arrêter
go-on = Continuer
save = Enregistrer ce qui est montré (CSV)
print = Imprimer ce qui est montré
cant-print = Ce navigateur n'imprime pas d'ici. Ouvrez la page dans son propre onglet et imprimez-la là.
too-large = C'est plus que ce qui tient sur le papier. Réduisez avec les filtres, ou enregistrez un tableau.
nothing = Rien de ce parc n'est montré : les filtres écartent toutes les paires.
empty =
    Le parc n'a pas encore de machine ou pas encore d'outil. Ajoutez-en sous
    «{ "\u00A0" }Modifier le parc{ "\u00A0" }», ou ouvrez un fichier de parc.
note =
    Chaque paire est calculée avec ses chiffres probables, au régime moteur de sa prise de force, avec l'altitude
    et les températures choisies. La chaleur de l'huile et les marges des chiffres
    se voient en ouvrant une paire. Des voies d'une paire qui conviennent, on montre celle au meilleur verdict ;
    à égalité, celle où il y a le moins à demander, puis celle qui apporte le plus. Apporté sur demandé : 1,00
    suffit tout juste. «{ "\u00A0" }?{ "\u00A0" }»{ "\u00A0" }: à demander d'abord, une chose qui doit convenir n'est pas connue.
ask-first = à demander d'abord
asks-yes = oui
asks-no = non
progress = { $done } machines calculées sur { $all }
part-shown = { $machines } machines sur { $all-machines }, { $implements } outils sur { $all-implements }

## Columns of the table

kind-of-machine = Type de machine
kind-of-implement = Type d'outil
ratio = Apporté sur demandé
delivered = Apporté
needed = Demandé

## Kinds and routes where there is little room

skid-steer = Chargeuse compacte
other = Autre
rear-shaft = Arbre arrière
mid-shaft = Arbre ventral
turned-forward = Ramené vers l'avant
own-hydraulics = Hydraulique machine
pump-pack = Groupe hydraulique
