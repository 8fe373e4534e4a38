### Where figures come from. Names of publications stay as they are.

# Beside a formula: "ηv = 0.95: from memory".
note = { $symbol } = { $figure }: { $source }

own = the yard's own figure
computed = follows from the other figures
common-practice = common practice, no source
from-memory = from memory
judgement = this project's judgement
pump-reference = engineeringtoolbox.com, hydraulic pumps: overall efficiency commonly 80 to 95 %
motor-article = a motor maker's article: about 75 % for gear motors to 92 % for piston motors
rating-rule = progressivegardening.com, converting tractor power ratings: 86 % rule; Univ. Arizona, cales.arizona.edu, agricultural machinery management: 0.90; the lower end, 0.83, from memory (ASABE D497)
gear-note = meadinfo.org, August 2008: efficiency bands of gear types
belt-sheet = US DOE tip sheet on belts (attribution inferred): 95 to 98 % new
coupler-table = a maker's table reproducing ISO 14541: size 12.5, 45 L/min at 1.5 bar or less, size 20, 106 L/min at 2.2 bar or less; what lies below is this project's judgement
starting-note = hydraulicspneumatics.com, chapter 15: low-speed motors start at 75 to 90 % of their highest torque
tank-rules = US Army TM 5-3820-256-24-2, chapter 7: a gallon or more for each gallon a minute; hydrauliclearning.com, an exercise: three
surface-rules = precisionfluidpower.com: 2.0 Btu/h for each square foot and °F; Sullivan, Fluid Power, 14.6: 0.001 hp
mower-article = informedfarmers.com, types of mowers: kW for each metre of width
chipper-trial = Silva Fennica 47(2) article 930 (2013), tables 2 and 4: 3.7 and 4.2 kWh for each oven-dry tonne
viscosity-chart = aimsindustrial.com.au, oil viscosity chart: ISO VG 46 and 68
