"""Three kinds of invented ovens and boards for make_ovens.py, which says what each of them is."""
import numpy as np

SIGMA = 5.67e-8


class Oven:
    def __init__(self, rng):
        self.n = int(rng.integers(6, 13))
        self.length = float(rng.choice([280, 300, 320, 350]))
        self.gap = float(rng.choice([20, 25, 40]))
        self.entrance = float(rng.integers(250, 450))
        self.cool = int(rng.integers(1, 3))
        self.offset = rng.normal(0, 2.2, self.n + self.cool)
        self.gain = rng.normal(1, 0.006)
        self.exchange = np.exp(rng.normal(0, 0.08, self.n + self.cool))
        self.level = float(rng.uniform(38, 75))
        self.edge = float(rng.uniform(20, 60))
        self.sag = float(rng.uniform(0.5, 3))
        self.belt = float(rng.normal(1, 0.004))
        self.shift = float(rng.normal(0, 12))
        self.emissivity = float(rng.uniform(0.6, 0.92))

    def starts(self):
        return self.entrance + np.arange(self.n + self.cool) * (self.length + self.gap)

    def total(self):
        return self.starts()[-1] + self.length + 300


def zone_field(oven, x, values, outside, edge):
    """Values of zones along the oven with tanh edges; outside at both ends."""
    s = oven.starts() + oven.shift
    y = np.full_like(x, outside)
    last = outside
    for k, v in enumerate(values):
        at = s[k] - (oven.gap / 2 if k else 0)
        y = y + (v - last) * 0.5 * (1 + np.tanh((x - at) / edge))
        last = v
    return y + (outside - last) * 0.5 * (1 + np.tanh((x - s[-1] - oven.length) / edge))


def air(oven, x, set_C, gain=1.0):
    target = [(25 + (v - 25) * oven.gain * gain + o) for v, o in zip(set_C, oven.offset)]
    return zone_field(oven, x, target, 25.0, oven.edge)


def exchange(oven, x, jets):
    h = zone_field(oven, x, list(oven.level * oven.exchange[:oven.n]) + list(0.7 * oven.level * oven.exchange[oven.n:]), 0.3 * oven.level, 25.0)
    inside = np.zeros_like(x, bool)
    for s in oven.starts() + oven.shift:
        inside |= (x > s) & (x < s + oven.length)
    return np.where(inside, h * (1 + jets * np.cos(2 * np.pi * x / 70.0)), np.where((x > oven.starts()[0]) & (x < oven.starts()[-1]), 0.45 * h, h))


class Slabs:
    """Each placement on its own: four layers of laminate, a part of two lumps above, solder between."""

    def __init__(self, rng, oven):
        self.oven, self.rng = oven, rng
        self.names = ["U1 centre", "U1 corner", "J2", "R7", "C4", "Board"][: int(rng.integers(4, 7))]
        m = len(self.names)
        self.thick = float(rng.choice([1.0, 1.6, 2.0])) * 1e-3
        self.capacity = 1850 * 1100 * self.thick * np.exp(rng.normal(0, 0.1, m)) * np.where(np.arange(m) < 2, 1.35, 1.0)
        self.through = 0.3 / (self.thick / 4) * np.exp(rng.normal(0, 0.15, m))
        self.part = np.array([3200, 2300, 2600, 350, 900, 0.0][:m]) * np.exp(rng.normal(0, 0.25, m))
        self.part_link = np.array([140, 160, 120, 300, 150, 0.0][:m])
        self.part_area = np.array([1.0, 1.0, 1.0, 0.6, 1.0, 0.0][:m])
        self.latent = np.array([260, 180, 150, 30, 90, 0.0][:m]) * 60  # J/m²
        self.x = rng.uniform(20, 220, m)
        self.bead_air = rng.uniform(0, 0.02, m)
        self.bias = rng.normal(0, 0.5, m)

    def run(self, recipe, drift, start):
        o, dt = self.oven, 0.1
        speed = recipe["speed"] * o.belt / 60
        duration = start + (o.total() + 250) / speed
        steps = int(duration / dt)
        m = len(self.names)
        T = np.full((4, m), 25.0)
        P = np.full((2, m), 25.0)
        melt = np.zeros(m)
        out = np.empty((steps, m))
        grid = np.arange(-800.0, o.total() + 800, 2.0)
        cool = recipe["cooling"]
        top = np.interp
        A = [air(o, grid, np.array(list(recipe[s]) + cool) + drift) for s in ("top", "bottom")]
        H = [exchange(o, grid, 0.35), exchange(o, grid + 20, 0.25)]
        c_layer = self.capacity / 4
        for i in range(steps):
            x = speed * (i * dt - start) - self.x
            a, b = (top(x, grid, q) for q in A)
            ht, hb = (top(x, grid, q) for q in H)
            mid = np.mean([a, b], axis=0)
            grow = 1 + 0.0015 * (T - 100)
            rad = lambda air_C, s: o.emissivity * SIGMA * ((air_C + 273.15) ** 4 - (s + 273.15) ** 4) * 0.9
            q = np.zeros((4, m))
            cover = np.where(self.part_area > 0, 0.35, 1.0)
            q[0] += cover * (ht * (a - T[0]) + rad(a, T[0])) + self.part_link * (P[0] - T[0])
            q[-1] += hb * (b - T[-1]) + rad(b, T[-1])
            flow = self.through * (T[1:] - T[:-1])
            q[:-1] += flow
            q[1:] -= flow
            T = T + dt * q / (c_layer * grow)
            safe = np.maximum(self.part, 1)
            up = self.part_link * (T[0] - P[0]) + 180 * (P[1] - P[0])
            # Enthalpy: solder shares the lower lump; it melts at 219 and freezes undercooled at 208.
            d = dt * up / (0.4 * safe)
            rising = (P[0] + d > 219) & (melt < 1) & (up > 0)
            falling = (P[0] + d < 208) & (melt > 0) & (up < 0)
            latent = np.maximum(self.latent, 1e-9)
            use = np.where(rising, np.minimum(dt * up, (1 - melt) * latent), np.where(falling, np.maximum(dt * up, -melt * latent), 0))
            melt = np.clip(melt + use / latent, 0, 1)
            P0 = P[0] + np.where(self.part > 0, (dt * up - use) / (0.4 * safe), T[0] - P[0])
            P1 = P[1] + np.where(self.part > 0, dt * (180 * (P[0] - P[1]) + self.part_area * (ht * (a - P[1]) + rad(a, P[1]))) / (0.6 * safe), T[0] - P[1])
            P = np.array([P0, P1])
            bead = np.where(self.part > 0, P[0], T[0])
            out[i] = (1 - self.bead_air) * bead + self.bead_air * mid + self.bias
        return np.arange(steps) * dt, out


class Plate:
    """One plate of 30 strips that conduct; zones sag under load; exchange follows belt speed."""

    def __init__(self, rng, oven):
        self.oven, self.rng = oven, rng
        self.names = ["U1", "U2", "J3", "R9", "C1", "L4"][: int(rng.integers(4, 7))]
        m = len(self.names)
        self.size = float(rng.uniform(160, 280))
        self.strips = 30
        base = 1.6e-3 * 1850 * 1050 * np.exp(rng.normal(0, 0.12, self.strips))
        self.x = np.sort(rng.uniform(10, self.size - 10, m))
        self.capacity = base
        self.k = float(rng.uniform(2, 30)) * 1.6e-3  # W/K per metre of width, copper included
        self.own = np.array([4200, 2500, 3000, 250, 1300, 1800][:m]) * np.exp(rng.normal(0, 0.3, m))
        self.link = np.array([60, 110, 80, 250, 120, 90][:m]) * np.exp(rng.normal(0, 0.2, m))
        self.latent = rng.uniform(0.5, 9, m)
        self.bead = rng.uniform(0.3, 1.5, m)
        self.bead_air = rng.uniform(0, 0.03, m)

    def run(self, recipe, drift, start):
        o, dt = self.oven, 0.1
        speed = recipe["speed"] * o.belt / 60
        steps = int((start + (o.total() + 250) / speed) / dt)
        m = len(self.names)
        xs = (np.arange(self.strips) + 0.5) * self.size / self.strips
        T = np.full(self.strips, 25.0)
        B = np.full(m, 25.0)
        R = np.full(m, 25.0)
        out = np.empty((steps, m))
        grid = np.arange(-800.0, o.total() + 800, 2.0)
        mean = (np.array(recipe["top"]) + np.array(recipe["bottom"])) / 2
        set_C = np.array(list(mean) + recipe["cooling"]) + drift
        A = air(o, grid, set_C, 1 + 0.0)
        wall = zone_field(o, grid, list(set_C * 0.97), 25.0, 60.0)
        H = exchange(o, grid, 0.1) * (recipe["speed"] / 800) ** 0.12
        sag = np.zeros(o.n + o.cool)
        mids = o.starts() + o.length / 2
        dx = self.size / self.strips / 1000
        near = np.clip((self.x / self.size * self.strips).astype(int), 0, self.strips - 1)
        for i in range(steps):
            lead = speed * (i * dt - start)
            x = lead - xs
            load = np.array([np.mean(np.abs(x - c) < o.length / 2) for c in mids]) if i % 10 == 0 else load
            sag += dt * ((o.sag * load) - sag) / 15.0
            a = np.interp(x, grid, A) - np.interp(x, mids, sag)
            h = np.interp(x, grid, H)
            w = np.interp(x, grid, wall)
            q = 2 * h * (a - T) + 2 * o.emissivity * SIGMA * ((w + 273.15) ** 4 - (T + 273.15) ** 4)
            q[1:-1] += self.k * (T[2:] - 2 * T[1:-1] + T[:-2]) / dx / dx
            q[0] += self.k * (T[1] - T[0]) / dx / dx
            q[-1] += self.k * (T[-2] - T[-1]) / dx / dx
            T = T + dt * q / (self.capacity * (1 + 0.0012 * (T - 100)))
            ab, hb = a[near], h[near]
            heat = self.link * (T[near] - B) + hb * (ab - B)
            cp = self.own * (1 + self.latent / 6 * np.exp(-0.5 * ((B - np.where(heat > 0, 219, 209)) / 2.4) ** 2))
            B = B + dt * heat / cp
            R = R + dt * (B + self.bead_air * (ab - B) - R) / self.bead
            out[i] = R
        return np.arange(steps) * dt, out


class Drafts:
    """Places on a board in an oven that leaks, drags and draws: a laminate cell and a part each, rails beside the edges."""

    def __init__(self, rng, oven):
        self.oven, self.rng = oven, rng
        self.names = ["U4", "U5", "J1", "R2", "C8", "L3"][: int(rng.integers(4, 7))]
        m = len(self.names)
        self.x = rng.uniform(15, 230, m)
        self.across = rng.uniform(-1, 1, m)  # −1 front rail, 1 back rail
        self.cell = 1.6e-3 * 1850 * 1100 * np.exp(rng.normal(0, 0.12, m)) * np.where(np.arange(m) < 2, 1.3, 1.0)
        self.own = np.array([4600, 2600, 3300, 300, 1200, 1700][:m]) * np.exp(rng.normal(0, 0.3, m))
        self.link = np.array([75, 110, 90, 260, 130, 100][:m]) * np.exp(rng.normal(0, 0.2, m))
        self.latent = np.array([230, 160, 190, 20, 70, 90][:m]) * 60.0
        self.leak = float(rng.uniform(0.12, 0.3))
        self.drag = float(rng.uniform(10, 45))  # mm of air carried along at 800 mm/min
        self.flow = float(rng.normal(0, 2.5))  # °C from the middle to the back rail
        self.rail = float(rng.uniform(3, 10))  # W/m²K drawn at the very edge
        self.blower_s = float(rng.uniform(2, 9))
        self.moisture = float(rng.uniform(500, 3500))  # J/m²
        self.warm = float(rng.uniform(0.1, 0.5))

    def held(self, setpoints_C):
        """What zones come to that can heat and not cool: leaks from their neighbours lift those set too low."""
        held = np.array(setpoints_C, float)
        for _ in range(60):
            around = np.concatenate([[held[0]], held, [held[-1]]])
            lifted = 0.5 * (around[:-2] + around[2:])
            held = np.maximum(setpoints_C, (1 - self.leak) * np.array(setpoints_C) + self.leak * lifted - 4)
        return held

    def run(self, recipe, drift, start):
        o, dt = self.oven, 0.1
        speed = recipe["speed"] * o.belt / 60
        steps = int((start + (o.total() + 250) / speed) / dt)
        m = len(self.names)
        grid = np.arange(-800.0, o.total() + 800, 2.0)
        cooling = np.array(recipe["cooling"])
        sides = [np.concatenate([self.held(recipe[s]), cooling]) + drift for s in ("top", "bottom")]
        A = [air(o, grid, s) for s in sides]
        H = exchange(o, grid, 0.18)
        T, P, A_top, A_low, R = (np.full(m, 25.0) for _ in range(5))
        melt, dry = np.zeros(m), np.zeros(m)
        out = np.empty((steps, m))
        edge = np.abs(self.across) ** 4
        behind = self.drag * recipe["speed"] / 800
        for i in range(steps):
            x = speed * (i * dt - start) - self.x
            inside = (x > o.starts()[0]) & (x < o.starts()[-1] + o.length)
            draft = np.where(inside, self.flow * self.across, 0)
            A_top += dt / self.blower_s * (np.interp(x - behind, grid, A[0]) + draft - A_top)
            A_low += dt / self.blower_s * (np.interp(x - behind, grid, A[1]) + draft - A_low)
            h = np.interp(x, grid, H)
            mean = 0.5 * (A_top + A_low)
            h = h * (1 + self.warm * (mean - 150) / 150)
            R += dt / 45 * (mean - R)
            rad = lambda a, s: o.emissivity * SIGMA * 0.9 * ((a + 273.15) ** 4 - (s + 273.15) ** 4)
            q = 0.6 * h * (A_top - T) + h * (A_low - T) + rad(A_low, T) + self.link * (P - T) + self.rail * edge * (R - T)
            # Moisture leaves in proportion to how far the laminate is above 90 °C, until it is dry.
            gone = np.minimum(np.maximum(T - 90, 0) * 0.6 * dt, self.moisture - dry)
            dry += gone
            T = T + (dt * q - gone) / (self.cell * (1 + 0.0013 * (T - 100)))
            up = self.link * (T - P) + 0.7 * (h * (A_top - P) + rad(A_top, P))
            d = dt * up / self.own
            rising, falling = (P + d > 219) & (melt < 1) & (up > 0), (P + d < 206) & (melt > 0) & (up < 0)
            use = np.where(rising, np.minimum(dt * up, (1 - melt) * self.latent), np.where(falling, np.maximum(dt * up, -melt * self.latent), 0))
            melt = np.clip(melt + use / self.latent, 0, 1)
            P = P + (dt * up - use) / self.own
            out[i] = P
        return np.arange(steps) * dt, out
