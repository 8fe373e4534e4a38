"""Darcy friction factors of round pipes: laminar 64/Re, turbulent Colebrook as `fluids` solves it."""

from fluids.friction import Clamond, friction_laminar

# Between these no formula holds.
LAMINAR_UP_TO = 2000.0
TURBULENT_FROM = 4000.0

STEPS_A_DECADE = 8
DECADES = 7
# Points of the published table (Re 1 to 1e7) that the steps miss.
TABLE = (2000.0, 4000.0)
IN_TRANSITION = (2001.0, 2200.0, 2600.0, 3000.0, 3400.0, 3800.0, 3999.0)
RELATIVE_ROUGHNESS = (0.0, 1e-5, 1e-4, 1e-3, 3e-3, 1e-2)


def colebrook(reynolds, roughness):
    # Clamond's iteration solves Colebrook's equation to the last digits over the whole range; the
    # closed form loses some where roughness times Reynolds number is large.
    return Clamond(reynolds, roughness)


def is_in_transition(reynolds):
    return LAMINAR_UP_TO < reynolds < TURBULENT_FROM


def factor(reynolds, roughness):
    """Outside the transition."""
    if reynolds <= LAMINAR_UP_TO:
        return friction_laminar(reynolds)
    return colebrook(reynolds, roughness)


def figures():
    steps = (10.0 ** (step / STEPS_A_DECADE) for step in range(DECADES * STEPS_A_DECADE + 1))
    grid = sorted({*steps, *TABLE})
    return [
        {
            "relative_roughness": roughness,
            "reynolds": reynolds,
            "factor": factor(reynolds, roughness),
        }
        for roughness in RELATIVE_ROUGHNESS
        for reynolds in grid
        if not is_in_transition(reynolds)
    ]


def bounds_in_transition():
    """What flow of either kind would give, were it of that kind."""
    return [
        {
            "relative_roughness": roughness,
            "reynolds": reynolds,
            "laminar": friction_laminar(reynolds),
            "turbulent": colebrook(reynolds, roughness),
        }
        for roughness in RELATIVE_ROUGHNESS
        for reynolds in IN_TRANSITION
    ]
