"""Pressure drops of random hoses and tubes (Darcy-Weisbach, by `fluids`)."""

from fluids.core import K_from_f, Reynolds, dP_from_K
from numpy import pi
from numpy.random import default_rng

import friction
from draws import even, log

SEED = 6
OF_EACH_KIND = 60


def figures():
    random = default_rng(SEED)
    laminar, turbulent = [], []
    while len(laminar) < OF_EACH_KIND or len(turbulent) < OF_EACH_KIND:
        line = draw(random)
        reynolds = reynolds_of(line)
        if friction.is_in_transition(reynolds):
            continue
        kind = laminar if reynolds <= friction.LAMINAR_UP_TO else turbulent
        if len(kind) < OF_EACH_KIND:
            kind.append(line | {"reynolds": reynolds, "drop_bar": drop(line) / 1e5})
    return laminar + turbulent


def draw(random):
    return {
        "flow_l_min": log(random, 5.0, 200.0),
        "bore_mm": log(random, 6.0, 40.0),
        "length_m": log(random, 0.3, 20.0),
        "viscosity_cst": log(random, 5.0, 1000.0),
        "density_kg_m3": even(random, 820.0, 920.0),
        "relative_roughness": log(random, 1e-6, 1e-2),
    }


def velocity(line):
    bore = line["bore_mm"] / 1e3
    return line["flow_l_min"] / 60e3 / (pi / 4.0 * bore**2)


def reynolds_of(line):
    return Reynolds(
        V=velocity(line), D=line["bore_mm"] / 1e3, nu=line["viscosity_cst"] * 1e-6
    )


def drop(line):
    """In pascals."""
    factor = friction.factor(reynolds_of(line), line["relative_roughness"])
    k = K_from_f(fd=factor, L=line["length_m"], D=line["bore_mm"] / 1e3)
    return dP_from_K(k, rho=line["density_kg_m3"], V=velocity(line))
