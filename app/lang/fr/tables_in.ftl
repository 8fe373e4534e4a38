### No native speaker has read this yet.

let-go = Lâchez pour l'ouvrir : un parc ou une comparaison (JSON), ou un tableau (CSV).
title = Tableaux pour tableur
tables =
    Les listes du parc pour un tableur, en CSV ; une fois modifiées, elles s'ouvrent ici comme un fichier de
    parc. Un modèle a toutes les colonnes et une ligne inventée pour commencer.
machines = Machines
    .small = machines
implements = Outils
    .small = outils
kits = Kits
    .small = kits
save-list = { $list } (CSV)
template-of = Modèle : { $list }

which-list = C'est un tableau de
which-how = Ce que le parc a et que le tableau n'a pas
merge = Reste
replace = Disparaît
take-over = Reprendre dans le parc
leave = Laisser
row = Ligne
entry = Entrée
becomes = Ce qui se passe
faults = Ce qui ne va pas
heading = Ce que { $file } changerait

asks-list = Ses en-têtes vont à plusieurs listes : dites de laquelle il s'agit. Rien n'a encore changé dans le parc.
asks-mark = Ses nombres peuvent se lire de deux façons : dites laquelle est la bonne. Rien n'a encore changé dans le parc.
has-faults =
    Il ne peut pas être repris : il a { $faults ->
        [one] une erreur
       *[other] { $faults } erreurs
    }. Le parc reste tel quel.
ready = { $counts }. Rien n'a encore changé dans le parc.
counts =
    { $new ->
        [one] { $new } nouvelle entrée
       *[other] { $new } nouvelles entrées
    }, { $changed ->
        [one] { $changed } modifiée
       *[other] { $changed } modifiées
    }, { $unchanged ->
        [one] { $unchanged } inchangée
       *[other] { $unchanged } inchangées
    }, { $removed ->
        [one] { $removed } supprimée
       *[other] { $removed } supprimées
    }

first-list = Dites d'abord de quelle liste il s'agit.
first-mark = Dites d'abord comment lire ses nombres.
first-mend = Corrigez ses erreurs dans le tableur, enregistrez-le et rouvrez-le.
changes-nothing = Il ne change rien.

which-mark = Ligne { $row }, { $column } indique { $cell }. Quel nombre est-ce ?
mark-decimals = { $number } : le signe précède les décimales
mark-thousands = { $number } : le signe sépare les milliers

becomes-new = nouvelle
becomes-changed = modifiée : { $columns }
becomes-unchanged = inchangée
removed-are = Supprimé : { $names }.
rows-more = et { $number } de plus
faults-more = Et { $number } de plus, une fois celles-ci corrigées.
took-list = { $file } est dans le parc. { $list } : { $counts }.
several-files = { $number } fichiers à la fois, c'est trop : ouvrez-les l'un après l'autre.
