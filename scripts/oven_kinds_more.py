"""Two further kinds of invented ovens and boards for make_ovens.py, which says what each of them is."""
import numpy as np

from oven_kinds import SIGMA, exchange

KELVIN = 273.15


class Chambers:
    """Zones as chambers under control, boards that draw heat from them."""

    def __init__(self, rng, oven):
        self.oven = oven
        self.names = ["U3", "U8", "J4", "R5", "L2", "T1"][: int(rng.integers(4, 7))]
        m = len(self.names)
        zones = oven.n + oven.cool
        self.x = rng.uniform(15, 225, m)
        self.wall_seen = float(rng.uniform(0.1, 0.4))  # share of the wall in the controller's sensor
        self.leak = float(rng.uniform(0.04, 0.15))  # to a neighbour, over what holds a chamber to its heater
        self.droop = rng.uniform(1, 5, zones)  # °C that a board takes while it is under a chamber, controller at rest
        self.answer_s = float(rng.uniform(12, 40))
        self.ramp = float(rng.uniform(30, 110))  # mm over which air passes from zone to zone
        self.top, self.low = float(rng.uniform(0.85, 1.2)), float(rng.uniform(0.75, 1.1))
        self.thick = float(rng.choice([0.8, 1.6, 2.4])) * 1e-3
        self.layer = 1850 * 1100 * self.thick / 3 * np.exp(rng.normal(0, 0.1, m))
        self.through = 0.35 / (self.thick / 3)
        self.copper = float(rng.uniform(2, 14))  # W/m²K to the shared plane
        self.part = np.array([3600, 2200, 2500, 300, 1400, 2900][:m]) * np.exp(rng.normal(0, 0.25, m))
        self.link = np.array([90, 120, 110, 300, 120, 80][:m]) * np.exp(rng.normal(0, 0.2, m))
        self.skin = np.array([0.8, 0.9, 1.1, 0.6, 1.0, 1.2][:m])
        self.latent = np.array([4.5, 3.0, 3.0, 1.5, 2.0, 3.0][:m]) * np.exp(rng.normal(0, 0.4, m))  # K of the part
        self.pasty = float(rng.uniform(1.5, 4))
        self.under = float(rng.uniform(2, 14))  # K of undercooling
        self.bead_s = rng.uniform(0.3, 2.0, m)
        self.gain = rng.normal(1, 0.002, m)

    def rest(self, setpoints_C):
        """Air of chambers without a board: sensors at their setpoints, where heaters, which cannot cool, can hold them."""
        want = np.array(setpoints_C, float)
        hot = want.copy()
        for _ in range(80):
            around = np.concatenate([[25.0], hot, [25.0]])
            pull = 0.5 * (around[:-2] + around[2:])
            idle = (25 + self.leak * 2 * pull) / (1 + self.leak * 2)  # no heating: air between neighbours and shop
            wall = hot - 0.06 * (hot - 25)  # walls lose to the shop
            held = want + self.wall_seen * (hot - wall)  # the sensor sees the cooler wall, so the air is warmer
            hot = np.maximum(held, idle)
        return hot

    def run(self, recipe, drift, start):
        o, dt = self.oven, 0.1
        speed = recipe["speed"] * o.belt / 60
        steps = int((start + (o.total() + 250) / speed) / dt)
        m, zones = len(self.names), o.n + o.cool
        cooling = np.array(recipe["cooling"])
        rest = [np.concatenate([self.rest(np.array(recipe[s]) + o.offset[: o.n]), cooling + o.offset[o.n:]]) + drift for s in ("top", "bottom")]
        mids = o.starts() + o.shift + o.length / 2
        # Straight ramps of `ramp` mm between flat zones; tunnels fall off to the shop.
        ends = np.concatenate([[o.starts()[0] + o.shift - 3 * self.ramp], *[[a + self.ramp / 2, a + o.length - self.ramp / 2] for a in o.starts() + o.shift], [o.starts()[-1] + o.shift + o.length + 3 * self.ramp]])
        grid = np.arange(-800.0, o.total() + 800, 2.0)
        H = exchange(o, grid, 0.15)
        along = lambda air, x: np.interp(x, ends, np.concatenate([[25.0], np.repeat(air, 2), [25.0]]))
        T = np.full((3, m), 25.0)
        P, B, out = np.full(m, 25.0), np.full(m, 25.0), np.empty((steps, m))
        plane, taken, control = 25.0, np.zeros(zones), np.zeros(zones)
        was = np.zeros(m)
        for i in range(steps):
            lead = speed * (i * dt - start)
            x = lead - self.x
            if i % 5 == 0:  # a board takes what it is colder than the air, and the controller gives it back late
                under = np.clip((np.minimum(lead, mids + o.length / 2) - np.maximum(lead - 240, mids - o.length / 2)) / o.length, 0, 1)
                draw = self.droop * under * np.clip((0.5 * (rest[0] + rest[1]) - plane) / 40, -0.5, 1.5)
                taken += 5 * dt * (draw - control - taken) / 6
                control += 5 * dt * (taken > 0) * taken / self.answer_s - 5 * dt * np.where(under > 0, 0, control) / self.answer_s
            air = [along(r - taken, x) for r in rest]
            h = np.interp(x, grid, H)
            rad = lambda a, s: o.emissivity * SIGMA * ((a + KELVIN) ** 4 - (s + KELVIN) ** 4)
            q = np.zeros((3, m))
            q[0] = 0.5 * (self.top * h * (air[0] - T[0]) + rad(air[0], T[0])) + self.link * (P - T[0])
            q[2] = self.low * h * (air[1] - T[2]) + rad(air[1], T[2])
            q[1] = self.copper * (plane - T[1])
            flow = self.through * (T[1:] - T[:-1])
            q[:-1] += flow
            q[1:] -= flow
            T = T + dt * q / (self.layer * (1 + 0.0014 * (T - 100)))
            plane += dt * (self.copper * (T[1] - plane)).mean() / (0.15 * self.layer.mean())
            heat = self.link * (T[0] - P) + self.skin * (self.top * h * (air[0] - P) + rad(air[0], P))
            at = np.where(heat > 0, 217 + self.pasty, 217 - self.under)
            pasty = self.latent / (self.pasty * np.sqrt(np.pi)) * np.exp(-((P - at) / self.pasty) ** 2)
            P = P + dt * heat / (self.part * (1 + pasty))
            B = B + dt * (P + 0.006 * (air[0] - P) - B) / self.bead_s
            out[i] = 25 + self.gain * (B - 25)
        return np.arange(steps) * dt, out


class Panels:
    """Panels that radiate, little air, surfaces that differ."""

    def __init__(self, rng, oven):
        self.oven = oven
        self.names = ["Q1", "Q2", "U6", "R8", "C3", "X1"][: int(rng.integers(4, 7))]
        m = len(self.names)
        self.x = rng.uniform(15, 225, m)
        self.absorbs = np.clip(rng.normal(0.85, 0.05, m), 0.6, 0.97)
        self.shadow = np.where(rng.uniform(size=m) < 0.3, rng.uniform(0.75, 0.95, m), 1.0)
        self.height = float(rng.uniform(45, 90))  # mm from panel to board
        self.far = float(rng.uniform(90, 220))  # mm over which the air follows the panels
        self.cool_air = float(rng.uniform(0.86, 0.97))  # air over panel, above the shop
        self.h = float(rng.uniform(14, 26))
        self.board = 1.6e-3 * 1850 * 1080 * np.exp(rng.normal(0, 0.1, m))
        self.part = np.array([2600, 1800, 2400, 250, 900, 1500][:m]) * np.exp(rng.normal(0, 0.25, m))
        self.link = np.array([80, 110, 100, 300, 130, 110][:m]) * np.exp(rng.normal(0, 0.2, m))
        self.latent = np.array([200, 140, 180, 25, 60, 100][:m]) * 60.0
        self.spread = float(rng.uniform(3, 12))
        self.glow_s = float(rng.uniform(5, 25))  # a panel cools a little where a board hangs before it
        self.glow = float(rng.uniform(0.5, 3))

    def run(self, recipe, drift, start):
        o, dt = self.oven, 0.1
        speed = recipe["speed"] * o.belt / 60
        steps = int((start + (o.total() + 250) / speed) / dt)
        m = len(self.names)
        grid = np.arange(-800.0, o.total() + 800, 5.0)
        s = o.starts() + o.shift
        mids = s + o.length / 2
        panels, airs = [], []
        reach = np.arange(-400.0, 401, 5.0)
        slant = (self.height**2 / (reach**2 + self.height**2)) ** 1.5
        slant /= slant.sum()
        mix = np.exp(-np.abs(reach) / self.far)
        mix /= mix.sum()
        for side in ("top", "bottom"):
            value = np.full_like(grid, 25.0)
            for k, v in enumerate(np.concatenate([np.array(recipe[side]) + o.offset[: o.n], np.array(recipe["cooling"]) + o.offset[o.n:]]) + drift):
                value[(grid >= s[k] - 1) & (grid <= s[k] + o.length + o.gap)] = v
            panels.append(np.convolve((value + KELVIN) ** 4, slant, "same"))
            airs.append(25 + self.cool_air * (np.convolve(np.where((grid > s[o.n - 1] + o.length), np.minimum(value, 60), value), mix, "same") - 25))
        edge = (grid < grid[0] + 400) | (grid > grid[-1] - 400)
        for p, a in zip(panels, airs):
            p[edge] = (25 + KELVIN) ** 4
            a[edge] = 25.0
        blow = np.where(grid > s[o.n - 1] + o.length, 2.2, 1.0) * self.h * np.exp(np.interp(grid, mids, np.log(o.exchange)))
        T, P = np.full(m, 25.0), np.full(m, 25.0)
        melt, out, sag, mean = np.zeros(m), np.empty((steps, m)), 0.0, 25.0
        for i in range(steps):
            x = speed * (i * dt - start) - self.x
            top, low = (np.interp(x, grid, p) for p in panels)
            air_top, air_low = (np.interp(x, grid, a) for a in airs)
            h = np.interp(x, grid, blow)
            sag += dt * (self.glow * np.clip((top.mean() ** 0.25 - KELVIN - mean) / 40, -1, 1.5) - sag) / self.glow_s
            top = (top**0.25 - sag) ** 4
            low = (low**0.25 - sag) ** 4
            body = (T + KELVIN) ** 4
            q = 0.4 * (self.absorbs * SIGMA * (top - body) + h * (air_top - T)) + self.absorbs * SIGMA * (low - body) + h * (air_low - T)
            q += self.link * (P - T) + self.spread * (T.mean() - T)
            T = T + dt * q / (self.board * (1 + 0.0013 * (T - 100)))
            mean = T.mean()
            up = self.link * (T - P) + self.shadow * self.absorbs * SIGMA * (top - (P + KELVIN) ** 4) + h * (air_top - P)
            d = dt * up / self.part
            rising, falling = (P + d > 218) & (melt < 1) & (up > 0), (P + d < 209) & (melt > 0) & (up < 0)
            use = np.where(rising, np.minimum(dt * up, (1 - melt) * self.latent), np.where(falling, np.maximum(dt * up, -melt * self.latent), 0))
            melt = np.clip(melt + use / self.latent, 0, 1)
            P = P + (dt * up - use) / self.part
            out[i] = P
        return np.arange(steps) * dt, out
