// One route in plain JavaScript, as a measure for the page's program: the machine's own hydraulics
// at the likely values, with the equations and the search of core/src.

const DRAG_SHARE = 0.5;
const LAMINAR_BELOW = 2000;
const TURBULENT_ABOVE = 4000;

/**
 * The stages in order, each from {rate, power} to the same, with what heats the oil, strain and
 * stall. The first is the pump, which says beforehand what it may take.
 */
export function stagesOf(f) {
  return [pump(f), divert(f), valve(f), hoses(f), motor(f), gear(f)];
}

// Q_s = leakage·V·n_r·(Δp/Δp_r)·(ν_r/ν), T_d = torque·share·(V·Δp_r/2π)·(ω/ω_r)·(ν/ν_r)
function losses(perRadian, leakage, torque, rated, viscosity) {
  const thickness = viscosity / rated.viscosity;
  return {
    leak: (leakage * perRadian * rated.speed) / rated.pressure / thickness,
    drag: (torque * DRAG_SHARE * perRadian * rated.pressure * thickness) / rated.speed,
    friction: torque * (1 - DRAG_SHARE),
  };
}

function pump(f) {
  const perRadian = f.pumpDisplacement / (2 * Math.PI);
  const rated = {
    speed: f.pumpRatedSpeed,
    pressure: f.pumpRatedPressure,
    viscosity: f.pumpRatedViscosity,
  };
  const lost = [1 - f.pumpVolumetric, 1 / f.pumpHydroMechanical - 1];
  const { leak, drag, friction } = losses(perRadian, ...lost, rated, f.viscosity);
  const pass = ({ rate: speed, power }) => {
    const torque = power / speed - drag * speed;
    if (torque <= 0) return stalled(perRadian * speed, power, 'pressure');
    const pressure = torque / (perRadian * (1 + friction));
    const strain = pressure / f.relief;
    const flow = perRadian * speed - leak * pressure;
    if (flow <= 0) return { ...stalled(0, power, 'flow'), strain };
    const rubbed = (perRadian * pressure * friction + drag * speed) * speed;
    return {
      rate: flow,
      power: pressure * flow,
      heat: leak * pressure * pressure + rubbed,
      strain,
      stall: null,
    };
  };
  // P = Δp·V·ω/2π + (C_f·V·Δp/2π + T_d)·ω
  pass.mayTake = (speed) => (f.relief * perRadian * (1 + friction) + drag * speed) * speed;
  return pass;
}

function divert(f) {
  return ({ rate: flow, power }) => {
    const used = Math.min(flow, f.mostFlow);
    const heat = (power * (flow - used)) / flow;
    return { rate: used, power: (power * used) / flow, heat, strain: 0, stall: null };
  };
}

function valve(f) {
  return (takes) => lessPressure(takes, ratedDrop(f.valveDrop, f.valveFlow, takes.rate));
}

function hoses(f) {
  const area = (bore) => (Math.PI / 4) * bore * bore;
  const inHose = (flow, bore, length, roughness) => {
    const velocity = flow / area(bore);
    const factor = frictionFactor((velocity * bore) / f.viscosity, roughness);
    // Δp = (f·L/d + K)·ρ·v²/2
    return ((factor * (length / bore) + f.fittings) * f.density * velocity * velocity) / 2;
  };
  const same =
    f.backBore === f.supplyBore &&
    f.backLength === f.supplyLength &&
    f.backRoughness === f.supplyRoughness;
  return (takes) => {
    const flow = takes.rate;
    const supply = inHose(flow, f.supplyBore, f.supplyLength, f.supplyRoughness);
    const back = same ? supply : inHose(flow, f.backBore, f.backLength, f.backRoughness);
    const couplers = f.couplers * ratedDrop(f.couplerDrop, f.couplerFlow, flow);
    return lessPressure(takes, supply + back + couplers);
  };
}

function motor(f) {
  const perRadian = f.motorDisplacement / (2 * Math.PI);
  const rated = {
    speed: f.motorRatedSpeed,
    pressure: f.motorRatedPressure,
    viscosity: f.motorRatedViscosity,
  };
  const lost = [1 / f.motorVolumetric - 1, 1 - f.motorHydroMechanical];
  const { leak, drag, friction } = losses(perRadian, ...lost, rated, f.viscosity);
  return ({ rate: flow, power }) => {
    const pressure = power / flow;
    const strain = pressure / f.motorHighest;
    const turned = flow - leak * pressure;
    if (turned <= 0) return { ...stalled(0, power, 'flow'), strain };
    const speed = turned / perRadian;
    const rubbed = perRadian * pressure * friction + drag * speed;
    const torque = perRadian * pressure - rubbed;
    if (torque <= 0) return { ...stalled(speed, power, 'pressure'), strain };
    const heat = leak * pressure * pressure + rubbed * speed;
    return { rate: speed, power: torque * speed, heat, strain, stall: null };
  };
}

function gear(f) {
  return ({ rate, power }) => ({
    rate: rate * f.gearRatio,
    power: power * f.gearEfficiency,
    heat: 0,
    strain: 0,
    stall: null,
  });
}

function stalled(rate, power, stall) {
  return { rate, power: 0, heat: power, strain: 0, stall };
}

function lessPressure({ rate: flow, power }, drop) {
  const heat = drop * flow;
  if (power <= heat) return stalled(flow, power, 'pressure');
  return { rate: flow, power: power - heat, heat, strain: 0, stall: null };
}

// Δp = Δp_r·(Q/Q_r)²
function ratedDrop(drop, ratedFlow, flow) {
  const part = flow / ratedFlow;
  return drop * part * part;
}

function frictionFactor(reynolds, roughness) {
  if (reynolds <= LAMINAR_BELOW) return 64 / reynolds;
  if (reynolds >= TURBULENT_ABOVE) return haaland(reynolds, roughness);
  const from = 64 / LAMINAR_BELOW;
  const to = haaland(TURBULENT_ABOVE, roughness);
  return from + ((to - from) * (reynolds - LAMINAR_BELOW)) / (TURBULENT_ABOVE - LAMINAR_BELOW);
}

// 1/√f = −1.8·log₁₀((ε/D/3.7)^1.11 + 6.9/Re)
function haaland(reynolds, roughness) {
  const root = -1.8 * Math.log10(Math.pow(roughness / 3.7, 1.11) + 6.9 / reynolds);
  return 1 / (root * root);
}

/** What each stage takes and gives where most arrives. */
export function ledger(f, stages) {
  const passages = [];
  let takes = { rate: f.speed, power: f.available * most(f, stages).part };
  for (const pass of stages) {
    const gives = pass(takes);
    passages.push({ takes, gives });
    takes = gives;
    if (gives.stall) break;
  }
  return passages;
}

function running(f, stages, part) {
  let strain = 0;
  let heat = 0;
  let drive = { rate: f.speed, power: f.available * part, stall: null };
  for (const pass of stages) {
    drive = pass(drive);
    strain = Math.max(strain, drive.strain);
    heat += drive.heat;
    if (drive.stall) break;
  }
  return { part, strain, heat, power: drive.power, stall: drive.stall };
}

function most(f, stages) {
  const at = (part) => running(f, stages, part);
  const highest = top(at, Math.min(1, stages[0].mayTake(f.speed) / f.available));
  if (!highest.stall && highest.heat < highest.power) return highest;
  const less = at(highest.part * (1 - 1e-7));
  if (less.stall || less.power <= highest.power) return highest;
  const best = bestBelow(at, highest.part);
  return best.stall ? highest : best;
}

function top(at, part) {
  const highest = at(part);
  if (highest.stall !== 'flow' && highest.strain <= 1 + 1e-13) return highest;
  const over = (it) => (it.stall === 'flow' ? 1e3 : it.strain - 1);
  return at(root([0, part], [-1, over(highest)], (part) => over(at(part))));
}

// Interpolate, truncate, project.
function root([a, b], [fA, fB], f) {
  const close = 2 ** -50;
  const mostSteps = 50;
  for (let step = 0; step < mostSteps; step += 1) {
    const width = b - a;
    if (width <= 2 * close || fA === 0) break;
    const middle = 0.5 * (a + b);
    const straight = (b * fA - a * fB) / (fA - fB);
    const inwards = middle >= straight ? 1 : -1;
    const nudge = 0.01 * width * width;
    const nudged = nudge <= Math.abs(middle - straight) ? straight + inwards * nudge : middle;
    const reach = close * 2 ** (mostSteps - step) - 0.5 * width;
    const x = Math.abs(nudged - middle) <= reach ? nudged : middle - inwards * reach;
    const fX = f(x);
    if (fX > 0) [b, fB] = [x, fX];
    else [a, fA] = [x, fX];
    if (fA >= -1e-14) break;
  }
  return a;
}

// The golden section.
function bestBelow(at, most) {
  const golden = (Math.sqrt(5) - 1) / 2;
  let [from, to] = [0, most];
  let low = at(to - golden * (to - from));
  let high = at(from + golden * (to - from));
  while (to - from > 1e-8 * most) {
    const rises =
      low.stall === 'pressure' || (high.stall !== 'flow' && high.power > low.power);
    if (rises) {
      from = low.part;
      low = high;
      high = at(from + golden * (to - from));
    } else {
      to = high.part;
      high = low;
      low = at(to - golden * (to - from));
    }
  }
  return high.power > low.power ? high : low;
}
