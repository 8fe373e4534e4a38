"""Whole hydraulic circuits: from an engine over gear, pump, valves, hoses and motor to a rotor.

Pumps and motors after Wilson's model (see texts on fluid power; from memory). With D = V/2π:

    pump:  Q = D·ω − C_s·D·Δp/μ,  T = D·Δp·(1 + C_f) + C_d·D·μ·ω
    motor: Q = D·ω + C_s·D·Δp/μ,  T = D·Δp·(1 − C_f) − C_d·D·μ·ω

The kinematic viscosity stands for μ: the oil's density is the same everywhere. Everything follows
from the pressure at the pump's outlet; what is looked for is the pressure at which most arrives.
"""

from functools import cache
from math import inf, pi

from fluids.core import K_from_f, Reynolds, dP_from_K
from fluids.friction import Clamond, Haaland, friction_laminar
from numpy import linspace
from numpy.random import default_rng
from scipy.optimize import brentq, minimize_scalar

from draws import even, four_digits, log
from friction import LAMINAR_UP_TO, TURBULENT_FROM

KW, BAR, L_MIN, RPM, CM3, CST = 1e3, 1e5, 1 / 60e3, 2 * pi / 60, 1e-6, 1e-6

SEED = 1946
RUNNING, STALLED = 300, 20

# This project's judgement, as in the core.
RATED_VISCOSITY = 30.0
DRAG_SHARE = 0.5

# Less than this part of the engine's power is mostly rounding of what is lost.
LEAST_PART = 0.01
# Pressures tried before the best of them is refined: no assumption that there is but one peak.
TRIED = 400


class Displacement:
    """A pump's or motor's displacement and coefficients, from its efficiencies at a rated point."""

    def __init__(self, part, leakage, torque_lost):
        self.per_radian = part["displacement_cm3"] * CM3 / (2 * pi)
        # μ·ω/Δp at the rated point
        rated = RATED_VISCOSITY * CST * part["rated_rpm"] * RPM / (part["rated_bar"] * BAR)
        self.slip = leakage * rated
        self.dry = torque_lost * (1 - DRAG_SHARE)
        self.viscous = torque_lost * DRAG_SHARE / rated

    def leak(self, pressure, viscosity):
        return self.slip * self.per_radian * pressure / viscosity

    def rub(self, pressure, viscosity, speed):
        return self.per_radian * (self.dry * pressure + self.viscous * viscosity * speed)


class Circuit:
    def __init__(self, given, turbulent=Haaland):
        self.given = given
        self.turbulent = turbulent
        pump, motor = given["pump"], given["motor"]
        self.pump = Displacement(
            pump, 1 - pump["volumetric"], 1 / pump["hydro_mechanical"] - 1
        )
        self.motor = Displacement(
            motor, 1 / motor["volumetric"] - 1, 1 - motor["hydro_mechanical"]
        )
        self.viscosity = given["viscosity_cst"] * CST
        self.relief = pump["relief_bar"] * BAR

    def at(self, pressure):
        """Everything at a pressure at the pump's outlet, in SI. Without flow the motor stands."""
        given, viscosity = self.given, self.viscosity
        speed = given["engine_rpm"] * RPM * given["gear_in"]["ratio"]

        leak = self.pump.leak(pressure, viscosity)
        full = self.pump.per_radian * speed
        asked = given["pump"]["demand_l_min"]
        flow = min(full - leak, inf if asked is None else asked * L_MIN)
        rub = self.pump.rub(pressure, viscosity, speed)
        # x·D·ω = Q + Q_s, T = x·D·Δp + …
        pump_torque = (flow + leak) / speed * pressure + rub
        losses = {"pump": leak * pressure + rub * speed}

        steering = given["steering_l_min"] * L_MIN
        rest = max(flow - steering, 0.0)
        losses["steering"] = pressure * steering
        most = given["divert_l_min"]
        used = min(rest, inf if most is None else most * L_MIN)
        losses["divert"] = pressure * (rest - used)
        valve, hoses = self.in_valve(used), self.in_hoses(used)
        losses["valve"] = valve * used
        losses["hoses"] = hoses * used

        difference = pressure - valve - hoses
        leak = self.motor.leak(difference, viscosity)
        motor_speed = max(used - leak, 0.0) / self.motor.per_radian
        rub = self.motor.rub(difference, viscosity, motor_speed)
        motor_torque = self.motor.per_radian * difference - rub
        losses["motor"] = leak * difference + rub * motor_speed

        out = given["gear_out"]
        turns = used > 0 and difference > 0 and motor_speed > 0 and motor_torque > 0
        return {
            "engine": pump_torque * speed / given["gear_in"]["efficiency"],
            "pump_torque": pump_torque,
            "pump_shaft": pump_torque * speed,
            "flow": flow,
            "reynolds": self.reynolds(given["hoses"]["supply"], used),
            "difference": difference,
            "motor_speed": motor_speed,
            "motor_shaft": motor_torque * motor_speed,
            "rotor_torque": motor_torque * out["efficiency"] / out["ratio"],
            "delivered": motor_torque * motor_speed * out["efficiency"] if turns else 0.0,
            "losses": losses,
        }

    def in_valve(self, flow):
        valve = self.given["valve"]
        if valve["at_l_min"] is None:
            return valve["drop_bar"] * BAR
        return valve["drop_bar"] * BAR * (flow / (valve["at_l_min"] * L_MIN)) ** 2

    def in_hoses(self, flow):
        hoses = self.given["hoses"]
        couplers = hoses["couplers"] * hoses["coupler_bar"] * BAR
        couplers *= (flow / (hoses["coupler_l_min"] * L_MIN)) ** 2
        return couplers + sum(self.in_hose(hoses[way], flow) for way in ("supply", "back"))

    def in_hose(self, hose, flow):
        """With the fittings, of which each hose has the same."""
        if flow <= 0:
            return 0.0
        factor = self.friction(self.reynolds(hose, flow), hose["relative_roughness"])
        k = K_from_f(fd=factor, L=hose["length_m"], D=hose["bore_mm"] / 1e3)
        k += self.given["hoses"]["fittings"]
        return dP_from_K(k, rho=self.given["density_kg_m3"], V=velocity(hose, flow))

    def reynolds(self, hose, flow):
        bore = hose["bore_mm"] / 1e3
        return Reynolds(V=velocity(hose, flow), D=bore, nu=self.viscosity)

    def friction(self, reynolds, roughness):
        if reynolds <= LAMINAR_UP_TO:
            return friction_laminar(reynolds)
        if reynolds >= TURBULENT_FROM:
            return self.turbulent(reynolds, roughness)
        low = friction_laminar(LAMINAR_UP_TO)
        high = self.turbulent(TURBULENT_FROM, roughness)
        part = (reynolds - LAMINAR_UP_TO) / (TURBULENT_FROM - LAMINAR_UP_TO)
        return low + (high - low) * part

    def highest(self):
        """The highest pressure that every limit allows, and the limit."""
        given = self.given
        limits = {
            "engine": ("engine", given["engine_kw"] * KW),
            "motor": ("difference", given["motor"]["highest_bar"] * BAR),
            "gear_in": ("pump_torque", given["gear_in"]["rating_nm"]),
            "gear_out": ("rotor_torque", given["gear_out"]["rating_nm"]),
        }
        highest = {"relief": self.relief}
        for limit, (figure, most) in limits.items():
            if most is None:
                continue

            def excess(pressure):
                return self.at(pressure)[figure] / most - 1

            if excess(0.0) >= 0:
                highest[limit] = 0.0
            elif excess(self.relief) > 0:
                highest[limit] = brentq(excess, 0.0, self.relief, xtol=1e-6, rtol=1e-14)
        limit = min(highest, key=highest.get)
        return highest[limit], limit

    def best(self):
        """The pressure up to the highest at which most arrives, and what holds it there."""
        highest, limit = self.highest()
        if highest <= 0:
            return 0.0, limit

        def missing(pressure):
            return -self.at(pressure)["delivered"]

        tried = linspace(0.0, highest, TRIED + 1)
        best = min(range(TRIED + 1), key=lambda place: missing(tried[place]))
        about = tried[max(best - 1, 0)], tried[min(best + 1, TRIED)]
        peak = minimize_scalar(missing, bounds=about, method="bounded", options={"xatol": 1e-3}).x
        if missing(highest) <= missing(peak):
            return highest, limit
        return peak, "flow"


def velocity(hose, flow):
    return flow / (pi / 4 * (hose["bore_mm"] / 1e3) ** 2)


def results(given):
    """Nothing where nothing arrives."""
    circuit = Circuit(given)
    pressure, limit = circuit.best()
    found = circuit.at(pressure)
    if found["delivered"] <= 0:
        return None
    colebrook = Circuit(given, Clamond)
    return {
        "limit": limit,
        "delivered_kw": found["delivered"] / KW,
        "pump_l_min": found["flow"] / L_MIN,
        "pump_bar": pressure / BAR,
        "motor_rpm": found["motor_speed"] / RPM,
        "rotor_nm": found["rotor_torque"],
        "oil_heat_kw": sum(found["losses"].values()) / KW,
        "between_shafts_kw": (found["pump_shaft"] - found["motor_shaft"]) / KW,
        "hose_loss_kw": found["losses"]["hoses"] / KW,
        "reynolds": found["reynolds"],
        "delivered_by_colebrook_kw": colebrook.at(colebrook.best()[0])["delivered"] / KW,
    }


def figures():
    return drawn()[0]


def stalled():
    return drawn()[1]


@cache
def drawn():
    """Circuits that run, and circuits at the end of which nothing arrives."""
    random = default_rng(SEED)
    running, stalled = [], []
    while len(running) < RUNNING or len(stalled) < STALLED:
        given = draw(random)
        found = results(given)
        if found is None:
            stalled.append(given)
        elif found["delivered_kw"] >= LEAST_PART * given["engine_kw"]:
            running.append({"given": given, "found": found})
    return running[:RUNNING], stalled[:STALLED]


def perhaps(random, part, number):
    """The number in this part of all draws, else nothing. It is always drawn."""
    return number if random.uniform() < part else None


def draw(random):
    """Parts of about one size, so that each limit is sometimes the nearest."""
    engine_kw, engine_rpm = log(random, 10.0, 60.0), even(random, 1500.0, 3000.0)
    gear_in_ratio = log(random, 0.3, 1.5)
    pump_rpm = engine_rpm * gear_in_ratio
    relief = even(random, 120.0, 260.0)
    # The pump that the engine could drive at relief pressure, times a factor.
    fitting = engine_kw * KW / (relief * BAR) / (pump_rpm / 60)
    displacement = log(random, 0.3, 1.3) * fitting / CM3
    flow = displacement * pump_rpm / 1e3
    motor_rpm = log(random, 500.0, 3000.0)
    motor_displacement = flow / motor_rpm * 1e3
    motor_bar = relief * log(random, 0.6, 1.6)
    gear_out_ratio = log(random, 0.2, 2.0)
    torque_in = displacement * CM3 * relief * BAR / (2 * pi)
    torque_out = motor_displacement * CM3 * relief * BAR / (2 * pi) / gear_out_ratio
    supply = hose(random, flow)
    return {
        "engine_kw": engine_kw,
        "engine_rpm": engine_rpm,
        "viscosity_cst": log(random, 8.0, 400.0),
        "density_kg_m3": even(random, 820.0, 920.0),
        "gear_in": {
            "ratio": gear_in_ratio,
            "efficiency": efficiency(random),
            "rating_nm": perhaps(random, 0.5, four_digits(torque_in * log(random, 0.6, 2.0))),
        },
        "pump": {
            "displacement_cm3": four_digits(displacement),
            "rated_rpm": four_digits(pump_rpm * log(random, 0.8, 2.0)),
            "rated_bar": four_digits(relief * log(random, 0.7, 1.3)),
            "volumetric": efficiency(random),
            "hydro_mechanical": efficiency(random),
            "relief_bar": relief,
            "demand_l_min": perhaps(random, 0.4, four_digits(flow * even(random, 0.4, 1.0))),
        },
        "steering_l_min": perhaps(random, 0.5, four_digits(flow * even(random, 0.03, 0.3))) or 0.0,
        "divert_l_min": perhaps(random, 0.5, four_digits(flow * even(random, 0.3, 0.9))),
        "valve": {
            "drop_bar": even(random, 3.0, 20.0),
            "at_l_min": perhaps(random, 0.6, four_digits(flow)),
        },
        "hoses": {
            "supply": supply,
            "back": supply if random.uniform() < 0.3 else hose(random, flow),
            "couplers": float(random.integers(0, 5)),
            "coupler_bar": even(random, 0.5, 4.0),
            "fittings": perhaps(random, 0.5, log(random, 0.5, 10.0)) or 0.0,
            "coupler_l_min": four_digits(flow * even(random, 0.7, 1.5)),
        },
        "motor": {
            "displacement_cm3": four_digits(motor_displacement),
            "rated_rpm": four_digits(motor_rpm * log(random, 0.7, 1.5)),
            "rated_bar": four_digits(motor_bar),
            "volumetric": efficiency(random),
            "hydro_mechanical": efficiency(random),
            "highest_bar": four_digits(motor_bar),
        },
        "gear_out": {
            "ratio": gear_out_ratio,
            "efficiency": efficiency(random),
            "rating_nm": perhaps(random, 0.5, four_digits(torque_out * log(random, 0.4, 1.5))),
        },
    }


def efficiency(random):
    return even(random, 0.75, 0.98)


def hose(random, flow):
    velocity = log(random, 2.0, 15.0)
    return {
        "bore_mm": four_digits((flow * L_MIN / velocity / (pi / 4)) ** 0.5 * 1e3),
        "length_m": log(random, 0.5, 8.0),
        "relative_roughness": log(random, 1e-5, 1e-2),
    }
