### No native speaker has read this yet.

shows = Por dónde va { $route } en la máquina, del motor al apero, colocado { $seat }.
