### No native speaker has read this yet.

not-a-skid-steer = esta máquina no es una minicargadora
a-skid-steer = los circuitos de una minicargadora tienen su propia vía
no-rear-pto = la máquina no tiene TdF trasera
no-mid-pto = la máquina no tiene TdF ventral
no-outlet = la máquina no tiene salida de aceite para un apero
no-rear-shaft = el apero no se vende con eje para el enganche trasero
no-front-shaft = el apero no se vende con eje para delante
no-motor = el apero no se vende con motor hidráulico
no-kit = este patio no tiene ningún kit para ello
kit-for-other-pto = el kit está hecho para { $needs }, la TdF gira a { $brings }
pump-would-be-too-fast = la bomba giraría a { $brings }, está hecha para { $highest } como mucho
wrong-speed = el eje trae { $brings }, el apero necesita { $needs }

no-flow-left = Las fugas, y la dirección si toma de aquí su aceite, se llevan todo lo que da la bomba: no queda nada para girar el rotor.
no-pressure-left = Bomba, mangueras, enchufes rápidos y motor hidráulico gastan todo lo que permiten el motor y la válvula limitadora a este caudal: el rotor se queda parado.
rotor-too-slow = El rotor alcanza { $speed } y necesita al menos { $lowest } para trabajar bien, tenga la potencia que tenga: no pasa de Forzado.
rotor-too-fast = El rotor giraría a { $speed }, más rápido que los { $highest } que admite: baje el régimen del motor.
far-from-rated = Esta etapa ({ $stage }) entrega menos de la mitad de lo que toma: trabaja lejos de aquello para lo que está hecha, y las cifras son aproximadas.
oil-out-of-range =
    El aceite está a { $viscosity }; bombas y motores están hechos para { $thinnest } a { $thickest }. Aquí las
    cifras son aproximadas; el manual de la máquina dice cómo calentarlo.
pump-too-fast = La bomba del grupo gira a { $speed }, más rápido que los { $highest } que admite: baje el régimen del motor.
line-too-narrow = El aceite corre a { $velocity } en { $line }; allí lo habitual es hasta { $usual }: una más ancha pierde menos.
suction-too-low =
    A la entrada de la bomba llegan { $inlet } absolutos y hacen falta { $lowest }: aspira burbujas y se desgasta.
    Una línea de aspiración más ancha o más corta, o una bomba por debajo de su aceite.
joint-angle = Cada junta se dobla { $angle }°: { $advice }.
wont-start =
    Parado a plena carga no vuelve a arrancar: el motor arranca con { $starts } en el rotor, el trabajo pide
    { $needs }. Retroceda y despéjelo con el motor de la máquina parado.
flow-diverted = Llegan { $comes }, el motor hidráulico admite { $used }: el resto vuelve al depósito y calienta el aceite.
