### No native speaker has read this yet.

note = { $symbol } = { $figure }: { $source }

own = cifra propia del patio
computed = se deduce de las otras cifras
common-practice = práctica habitual, sin fuente
from-memory = de memoria
judgement = criterio de este proyecto
pump-reference = engineeringtoolbox.com, bombas hidráulicas: rendimiento total habitual, del 80 al 95 %
motor-article = artículo de un fabricante de motores: del 75 % (motores de engranajes) al 92 % (motores de pistones), aproximadamente
rating-rule = progressivegardening.com, conversión de potencias de tractores: regla del 86 %; Univ. de Arizona, cales.arizona.edu, gestión de maquinaria agrícola: 0,90; el extremo inferior, 0,83, de memoria (ASABE D497)
gear-note = meadinfo.org, agosto de 2008: márgenes de rendimiento por tipo de engranaje
belt-sheet = hoja de consejos del US DOE sobre correas (atribución deducida): del 95 al 98 %, nuevas
coupler-table = tabla de un fabricante que reproduce la ISO 14541: tamaño 12,5, 45 L/min a 1,5 bar o menos; tamaño 20, 106 L/min a 2,2 bar o menos; lo que queda por debajo es criterio de este proyecto
starting-note = hydraulicspneumatics.com, capítulo 15: los motores lentos arrancan con un 75 a 90 % de su par máximo
tank-rules = US Army TM 5-3820-256-24-2, capítulo 7: un galón o más por cada galón por minuto; hydrauliclearning.com, un ejercicio: tres
surface-rules = precisionfluidpower.com: 2,0 Btu/h por pie cuadrado y °F; Sullivan, Fluid Power, 14.6: 0,001 hp
mower-article = informedfarmers.com, tipos de segadoras: kW por metro de ancho
chipper-trial = Silva Fennica 47(2), artículo 930 (2013), tablas 2 y 4: 3,7 y 4,2 kWh por tonelada anhidra
viscosity-chart = aimsindustrial.com.au, gráfico de viscosidades: ISO VG 46 y 68
