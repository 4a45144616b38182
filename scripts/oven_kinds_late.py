"""Two kinds of invented ovens and boards that no constant of the model was set on, for make_ovens.py, which says what they are."""
import numpy as np

from oven_kinds import SIGMA, air, exchange, zone_field

KELVIN = 273.15


def molten(P, up, dt, heat_capacity, latent, melt, at=(218, 208)):
    """One step of a part whose solder melts and freezes undercooled: heat `up`, W/m², goes into it or into its solder."""
    d = dt * up / heat_capacity
    rising, falling = (P + d > at[0]) & (melt < 1) & (up > 0), (P + d < at[1]) & (melt > 0) & (up < 0)
    use = np.where(rising, np.minimum(dt * up, (1 - melt) * latent), np.where(falling, np.maximum(dt * up, -melt * latent), 0))
    return P + (dt * up - use) / heat_capacity, np.clip(melt + use / latent, 0, 1)


class Lamps:
    """Blown air, and emitters above: medium-wave ones that follow their setpoint, short-wave ones in the last zones whose light
    surfaces take up by their colour, and whose power the zone's air sensor calls for."""

    def __init__(self, rng, oven):
        self.oven = oven
        self.names = ["K1", "U9", "J6", "R4", "C2", "D5"][: int(rng.integers(4, 7))]
        m = len(self.names)
        self.x = rng.uniform(15, 225, m)
        self.h = float(rng.uniform(26, 48))
        self.medium = float(rng.uniform(0.75, 0.92))  # absorbed of medium waves and given off, by all surfaces
        self.short = rng.uniform(0.45, 0.65, m)  # absorbed of short waves by the laminate
        self.colour = np.array([0.9, 0.85, 0.35, 0.8, 0.6, 0.9][:m]) * np.exp(rng.normal(0, 0.06, m))  # by the part
        self.lamps = int(rng.integers(2, 4))  # zones with lamps, the last ones
        self.power = float(rng.uniform(250, 900))  # W/m² at rest, for air 200 °C above the shop
        self.call = float(rng.uniform(4, 14))  # W/m² for each °C above the neighbours' air
        self.answer = float(rng.uniform(2, 9))  # W/m² for each °C that a board is colder than the air
        self.answer_s = float(rng.uniform(8, 25))
        self.cell = 1.6e-3 * 1850 * 1090 * np.exp(rng.normal(0, 0.12, m))
        self.part = np.array([3000, 2300, 2600, 260, 1000, 1600][:m]) * np.exp(rng.normal(0, 0.25, m))
        self.link = np.array([80, 110, 90, 280, 120, 110][:m]) * np.exp(rng.normal(0, 0.2, m))
        self.latent = np.array([210, 150, 170, 25, 60, 100][:m]) * 60.0
        self.spread = float(rng.uniform(3, 10))
        self.bead_s = rng.uniform(0.3, 1.5, m)

    def run(self, recipe, drift, start):
        o, dt = self.oven, 0.1
        speed = recipe["speed"] * o.belt / 60
        steps = int((start + (o.total() + 250) / speed) / dt)
        m = len(self.names)
        grid = np.arange(-800.0, o.total() + 800, 4.0)
        cooling = np.array(recipe["cooling"])
        sides = [np.concatenate([recipe[s], cooling]) + drift for s in ("top", "bottom")]
        airs = [air(o, grid, s) for s in sides]
        panels = [(zone_field(o, grid, list(25 + 0.98 * (s + o.offset - 25)), 25.0, 30.0) + KELVIN) ** 4 for s in sides]
        H = self.h / o.level * exchange(o, grid, 0.15)
        top = np.array(recipe["top"])
        around = 0.5 * (np.concatenate([[25], top[:-1]]) + np.concatenate([top[1:], [cooling[0]]]))
        light = self.power * (top - 25) / 200 + self.call * np.clip(top - around, -30, 60)
        light = np.where(np.arange(o.n) >= o.n - self.lamps, np.maximum(light, 0), 0)
        L = zone_field(o, grid, list(light) + [0.0] * o.cool, 0.0, 45.0)
        on = zone_field(o, grid, list((light > 0) * 1.0) + [0.0] * o.cool, 0.0, 45.0)
        T, P, B = (np.full(m, 25.0) for _ in range(3))
        melt, out, called = np.zeros(m), np.empty((steps, m)), 0.0
        for i in range(steps):
            x = speed * (i * dt - start) - self.x
            a, b = (np.interp(x, grid, q) for q in airs)
            above, below = (np.interp(x, grid, q) for q in panels)
            h = np.interp(x, grid, H)
            called += dt * (self.answer * np.clip((a - T).mean(), 0, 60) - called) / self.answer_s
            lit = np.interp(x, grid, L) + called * np.interp(x, grid, on)
            q = 0.45 * (h * (a - T) + self.medium * SIGMA * (above - (T + KELVIN) ** 4) + self.short * lit)
            q += h * (b - T) + self.medium * SIGMA * (below - (T + KELVIN) ** 4) + self.link * (P - T) + self.spread * (T.mean() - T)
            T = T + dt * q / (self.cell * (1 + 0.0013 * (T - 100)))
            up = self.link * (T - P) + 0.8 * h * (a - P) + self.medium * SIGMA * (above - (P + KELVIN) ** 4) + self.colour * lit
            P, melt = molten(P, up, dt, self.part, self.latent, melt)
            B = B + dt * (P - B) / self.bead_s
            out[i] = B
        return np.arange(steps) * dt, out


class Mesh:
    """Few long zones; the board lies on a mesh that takes heat from it and gives it back, between rails that lag; exchange
    follows the belt, and air is drawn from zone to zone."""

    def __init__(self, rng, oven):
        oven.n, oven.length, oven.gap = int(rng.integers(4, 7)), float(rng.choice([450, 520, 600])), float(rng.choice([30, 50, 80]))
        oven.offset, oven.exchange = rng.normal(0, 2.0, oven.n + oven.cool), np.exp(rng.normal(0, 0.09, oven.n + oven.cool))
        self.oven = oven
        self.names = ["U5", "U7", "J8", "R6", "C9", "F1"][: int(rng.integers(4, 7))]
        m = len(self.names)
        self.x = rng.uniform(15, 225, m)
        self.edge = np.abs(rng.uniform(-1, 1, m)) ** 3
        self.rail = float(rng.uniform(4, 14))  # W/m²K to the rail, at the very edge
        self.rail_mm = float(rng.uniform(150, 400))  # along which a rail evens out
        self.mesh = float(rng.uniform(1500, 4500))  # J/m²K
        self.lies = float(rng.uniform(12, 35))  # W/m²K between mesh and board
        self.open = float(rng.uniform(0.45, 0.75))  # of the bottom that the air still reaches
        self.warm = float(rng.uniform(30, 70))  # °C of the mesh as it comes back
        self.follows = float(rng.uniform(0.05, 0.3))  # exchange over the belt
        self.drawn = float(rng.uniform(-60, 60))  # mm by which air is drawn along the oven
        self.cell = 1.6e-3 * 1850 * 1100 * np.exp(rng.normal(0, 0.12, m)) * np.where(np.arange(m) < 2, 1.25, 1.0)
        self.part = np.array([3800, 2500, 2900, 280, 1100, 2000][:m]) * np.exp(rng.normal(0, 0.3, m))
        self.link = np.array([80, 110, 90, 280, 120, 100][:m]) * np.exp(rng.normal(0, 0.2, m))
        self.latent = np.array([220, 150, 180, 25, 70, 110][:m]) * 60.0
        self.spread = float(rng.uniform(2, 10))

    def run(self, recipe, drift, start):
        o, dt = self.oven, 0.1
        speed = recipe["speed"] * o.belt / 60
        steps = int((start + (o.total() + 250) / speed) / dt)
        m = len(self.names)
        grid = np.arange(-800.0, o.total() + 800, 4.0)
        cooling = np.array(recipe["cooling"])
        sides = [air(o, grid, np.concatenate([recipe[s], cooling]) + drift) for s in ("top", "bottom")]
        reach = np.arange(-600.0, 601, 4.0)
        even = np.exp(-np.abs(reach) / self.rail_mm)
        rail = 25 + 0.92 * np.convolve(np.pad(0.5 * (sides[0] + sides[1]) - 25, 150, "edge"), even / even.sum(), "valid")
        H = exchange(o, grid, 0.2) * (recipe["speed"] / 800) ** self.follows
        T, P, M = np.full(m, 25.0), np.full(m, 25.0), np.full(m, self.warm)
        melt, out = np.zeros(m), np.empty((steps, m))
        gives = lambda a, s: o.emissivity * SIGMA * ((a + KELVIN) ** 4 - (s + KELVIN) ** 4)
        for i in range(steps):
            x = speed * (i * dt - start) - self.x
            a, b = (np.interp(x - self.drawn, grid, q) for q in sides)
            r, h = np.interp(x, grid, rail), np.interp(x, grid, H)
            low = 0.9 * h * (b - M) + 0.7 * gives(b, M)
            M = M + dt * (low + self.lies * (T - M)) / self.mesh
            q = 0.5 * (h * (a - T) + gives(a, T)) + self.open * (h * (b - T) + gives(b, T)) + self.lies * (M - T)
            q += self.link * (P - T) + self.rail * self.edge * (r - T) + self.spread * (T.mean() - T)
            T = T + dt * q / (self.cell * (1 + 0.0013 * (T - 100)))
            up = self.link * (T - P) + 0.8 * (h * (a - P) + gives(a, P))
            P, melt = molten(P, up, dt, self.part, self.latent, melt, (218, 207))
            out[i] = P
        return np.arange(steps) * dt, out
