"""Every unit in SI, by `pint`."""

from pint import UnitRegistry

NUMBERS = (-17.5, 0.37, 4210.0)

# The case files' names of units, by the SI unit of their kind, with pint's names.
UNITS = {
    "w": {
        "w": "watt",
        "kw": "kilowatt",
        "hp": "horsepower",
        "metric_hp": "metric_horsepower",
    },
    "rad_s": {"rad_s": "radian / second", "rpm": "revolution / minute"},
    "nm": {
        "nm": "newton * meter",
        "lb_ft": "pound_force * foot",
        "lb_in": "pound_force * inch",
    },
    "pa": {"pa": "pascal", "bar": "bar", "psi": "pound_force / inch ** 2"},
    "m3_s": {
        "m3_s": "meter ** 3 / second",
        "l_min": "liter / minute",
        "gpm": "US_liquid_gallon / minute",
    },
    "m3": {"m3": "meter ** 3", "cm3": "centimeter ** 3", "in3": "inch ** 3"},
    "m": {"m": "meter", "mm": "millimeter", "in": "inch", "ft": "foot"},
    "m_s": {"m_s": "meter / second", "ft_s": "foot / second"},
    "k": {"k": "kelvin", "c": "degree_Celsius", "f": "degree_Fahrenheit"},
    "m2_s": {"m2_s": "meter ** 2 / second", "cst": "centistokes"},
    "kg_m3": {"kg_m3": "kilogram / meter ** 3"},
}


def figures():
    quantity = UnitRegistry().Quantity
    return [
        {
            "number": number,
            "unit": unit,
            "si_unit": si_unit,
            "si_number": quantity(number, name).to(units[si_unit]).magnitude,
        }
        for si_unit, units in UNITS.items()
        for unit, name in units.items()
        for number in NUMBERS
    ]
