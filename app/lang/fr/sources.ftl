### No native speaker has read this yet.

note = { $symbol } = { $figure } : { $source }

own = chiffre du parc lui-même
computed = découle des autres chiffres
common-practice = usage courant, sans source
from-memory = de mémoire
judgement = jugement de ce projet
pump-reference = engineeringtoolbox.com, pompes hydrauliques : rendement total usuel de 80 à 95 %
motor-article = article d'un fabricant de moteurs : d'environ 75 % (moteurs à engrenages) à 92 % (moteurs à pistons)
rating-rule = progressivegardening.com, conversion des puissances de tracteurs : règle des 86 % ; Univ. d'Arizona, cales.arizona.edu, gestion du machinisme agricole : 0,90 ; la borne basse, 0,83, de mémoire (ASABE D497)
gear-note = meadinfo.org, août 2008 : plages de rendement par type d'engrenage
belt-sheet = fiche-conseil de l'US DOE sur les courroies (attribution déduite) : de 95 à 98 %, neuves
coupler-table = tableau d'un fabricant reproduisant l'ISO 14541 : taille 12,5, 45 L/min à 1,5 bar ou moins ; taille 20, 106 L/min à 2,2 bar ou moins ; ce qui est en dessous est le jugement de ce projet
starting-note = hydraulicspneumatics.com, chapitre 15 : les moteurs lents démarrent à 75 à 90 % de leur couple maximal
tank-rules = US Army TM 5-3820-256-24-2, chapitre 7 : un gallon ou plus pour chaque gallon par minute ; hydrauliclearning.com, un exercice : trois
surface-rules = precisionfluidpower.com : 2,0 Btu/h par pied carré et °F ; Sullivan, Fluid Power, 14.6 : 0,001 hp
mower-article = informedfarmers.com, types de tondeuses : kW par mètre de largeur
chipper-trial = Silva Fennica 47(2), article 930 (2013), tableaux 2 et 4 : 3,7 et 4,2 kWh par tonne anhydre
viscosity-chart = aimsindustrial.com.au, graphique des viscosités : ISO VG 46 et 68
