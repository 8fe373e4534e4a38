### No native speaker has read this yet.

bad-file =
    { $file } n'est pas utilisable : { $faults ->
        [one] il a une erreur
       *[other] il a { $faults } erreurs
    }. Le parc qui était ouvert le reste. Corrigez cela et rouvrez-le.
unreadable-file = { $file } n'a pas pu être lu sur le disque. Le parc qui était ouvert le reste.
opened-yard =
    { $file } est ouvert, et se rouvrira avec cette page : ce navigateur le garde. Il ne quitte pas cet
    appareil. «{ "\u00A0" }Modifier le parc{ "\u00A0" }» permet d'annuler cette étape.
opened-comparison =
    { $file } est ouvert, avec le parc de cette comparaison, que ce navigateur garde. Tout reste
    sur cet appareil. «{ "\u00A0" }Modifier le parc{ "\u00A0" }» permet de retrouver le parc d'avant.
bad-link = { $fault } Ce que vous voyez est le début de ce parc.
    .damaged = Le lien est abîmé : peut-être a-t-il été coupé en le copiant.
    .newer = Le lien vient d'une version plus récente de cette page. Rechargez d'abord la page.
    .too-long = Le lien est plus long que tous ceux que fait cette page.
missing-from-yard =
    Le lien nomme ce que ce parc n'a pas, ou a avec des erreurs : { $missing }. { $elsewhere } Le reste est
    montré.
    .in-demo = Le parc de démonstration l'a.
    .in-another = Si cela vient d'un autre parc, ouvrez le fichier de ce parc.
bad-settings = Les réglages du lien ne vont pas à cette machine ; ce sont donc ses propres chiffres qui sont montrés.
cant-save = Ce navigateur ne laisse pas la page enregistrer un fichier ici. Ouvrez la page dans son propre onglet et réessayez.
saved-from-frame = { $file } a été remis, mais la page qui entoure celle-ci peut retenir les fichiers. Si aucun n'est arrivé, prenez-le ici :
cant-draw =
    Ce navigateur ne peut pas faire ici une image en pixels. Enregistrez-la en SVG : elle montre la même
    chose, nette à toute taille.
no-ledger = { $route } : ne peut pas être attelé ici, donc pas de bilan. Ouvrez une autre voie et enregistrez son bilan.

mend-here = L'ouvrir quand même, et le corriger ici
open-demo = Ouvrir le parc de démonstration pour ce lien
save-yard = Enregistrer le parc de cet onglet comme fichier
save-kept = Enregistrer comme fichier ce qui était gardé
take-other = Prendre celui de l'autre onglet
take-kept = Ouvrir le parc qui est gardé
keep-mine = Garder le mien
overwrite = Garder ce parc à sa place

denied =
    Ce navigateur ne laisse pas la page garder quoi que ce soit ici : vos modifications durent tant que cette
    page reste ouverte. Enregistrez le parc comme fichier pour le retrouver.
full =
    La place que donne ce navigateur est pleine : vos dernières modifications ne sont pas gardées, celles
    d'avant le sont toujours. Enregistrez le parc comme fichier pour le retrouver.
set-aside =
    Ce que ce navigateur avait gardé de votre parc est abîmé et illisible. Cela a été mis de côté, pas jeté ;
    le parc de démonstration est ouvert. Si vous avez enregistré votre parc comme fichier, ouvrez-le.
held =
    Ce navigateur garde un parc que cette version de la page ne sait pas lire, sans doute d'une version plus
    récente. Il reste tel quel, donc rien de ce que vous modifiez ici n'est gardé. Rechargez d'abord la page ;
    c'est peut-être une ancienne.
other-changed =
    Le parc a été modifié dans un autre onglet. Tant que vous n'avez pas dit lequel des deux compte, les
    modifications de cet onglet ne sont pas gardées.
other-went-back =
    Un autre onglet est revenu au parc de démonstration. Tant que vous n'avez pas dit lequel des deux compte,
    les modifications de cet onglet ne sont pas gardées.
passed-over =
    Le parc de démonstration est ouvert. Le parc que ce navigateur garde est toujours là, tel quel ; tant que
    vous n'avez pas dit lequel des deux compte, rien de ce que vous modifiez ici n'est gardé.
