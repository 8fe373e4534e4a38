"""Viscosity of oils over temperature after ASTM D341.

A straight line of ln ln(cSt + 0.7) over ln K through the two points of an oil's sheet; logarithms of
any base give the same line. The standard's added terms are nothing above 2 cSt.
"""

from numpy import array, exp, linalg, log
from numpy.random import default_rng

import draws

ICE = 273.15
CELSIUS = (-10.0, 0.0, 15.0, 20.0, 40.0, 50.0, 60.0, 80.0, 90.0, 100.0)

# Grade: cSt at 40 °C, by its definition; cSt at 100 °C, from memory, of a viscosity index near 100.
GRADES = {22.0: 4.3, 32.0: 5.4, 46.0: 6.8, 68.0: 8.7, 100.0: 11.4}

SEED = 341
OF_USERS = 20


def figures():
    random = default_rng(SEED)
    oils = [*GRADES.items(), *(of_a_user(random) for _ in range(OF_USERS))]
    return [
        {
            "at_40_cst": at_40,
            "at_100_cst": at_100,
            "at_c": celsius,
            "viscosity_cst": viscosity(at_40, at_100, celsius),
        }
        for at_40, at_100 in oils
        for celsius in CELSIUS
    ]


def of_a_user(random):
    """About half of the logarithm is left at 100 °C: from memory."""
    at_40 = draws.log(random, 15.0, 220.0)
    at_100 = draws.four_digits(at_40 ** random.uniform(0.45, 0.62))
    return at_40, at_100


def viscosity(at_40, at_100, celsius):
    # ln ln(cSt + 0.7) = a - b·ln K, two equations for a and b
    ln_kelvins = log(array([40.0, 100.0]) + ICE)
    matrix = array([[1.0, -ln_kelvins[0]], [1.0, -ln_kelvins[1]]])
    a, b = linalg.solve(matrix, log(log(array([at_40, at_100]) + 0.7)))
    return exp(exp(a - b * log(celsius + ICE))) - 0.7
