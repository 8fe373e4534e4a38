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
        "btu_h": "Btu_it / hour",
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
    "m": {"m": "meter", "mm": "millimeter", "cm": "centimeter", "in": "inch", "ft": "foot"},
    "m_s": {
        "m_s": "meter / second",
        "ft_s": "foot / second",
        "km_h": "kilometer / hour",
        "mph": "mile / hour",
    },
    "k": {"k": "kelvin", "c": "degree_Celsius", "f": "degree_Fahrenheit"},
    "m2_s": {"m2_s": "meter ** 2 / second", "cst": "centistokes"},
    "kg_m3": {"kg_m3": "kilogram / meter ** 3", "lb_ft3": "pound / foot ** 3"},
    "n": {"n": "newton", "kn": "kilonewton", "lbf": "pound_force"},
    "kg": {"kg": "kilogram", "t": "metric_ton", "short_tons": "short_ton", "lb": "pound"},
    "m2": {"m2": "meter ** 2", "in2": "inch ** 2", "ft2": "foot ** 2"},
    "l": {"l": "liter", "cubic_metres": "meter ** 3", "yd3": "yard ** 3", "gal": "US_liquid_gallon"},
    "s": {"s": "second", "min": "minute", "h": "hour"},
    "j": {"j": "joule", "kwh": "kilowatt_hour", "btu": "Btu_it"},
    "k_degrees": {"k_degrees": "delta_degree_Celsius", "f_degrees": "delta_degree_Fahrenheit"},
    "j_k": {"j_k": "joule / kelvin"},
    "j_kg_k": {
        "j_kg_k": "joule / kilogram / kelvin",
        "kj_kg_k": "kilojoule / kilogram / kelvin",
        "btu_lb_f": "Btu_it / pound / delta_degree_Fahrenheit",
    },
    "w_k": {"w_k": "watt / kelvin"},
    "w_m2_k": {
        "w_m2_k": "watt / meter ** 2 / kelvin",
        "btu_h_ft2_f": "Btu_it / hour / foot ** 2 / delta_degree_Fahrenheit",
        "hp_ft2_f": "horsepower / foot ** 2 / delta_degree_Fahrenheit",
    },
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
