"""
The press by plain stepping in NumPy: the same equations as src/physics and src/press, written apart from them, all
patches at once, no acceleration. Reads one set-up as JSON from standard input, prints readings and the time it took.
The bench runs it, where Python 3 with NumPy is there, to have something to be compared with.
"""

import json
import sys
import time

import numpy as np

STORE = 80.0  # um
SPEED_POWER, COOLING, THINNESS = 0.35, 0.025, 0.15
WATER_LOSS, WATER_TIME = 0.15, 0.06  # share at normal dampening; s
PAPER_MODULUS = 10.0


def pick_table(evenness):
    """ln of the chance that the paper tears, over ln(pull / strength): integral of e^-e (1 - exp(-r^10 e^(10/m)))."""
    u = np.linspace(-40, 5, 2001)
    density = np.exp(u - np.exp(u)) * (u[1] - u[0])
    ratios = np.linspace(-3, 6, 1801)
    chance = [np.sum(density * -np.expm1(-np.exp(PAPER_MODULUS * (r + u / evenness)))) for r in ratios]
    return ratios, np.log(chance)


def settle(setup, revolutions):
    inks, paper, press = setup["inks"], setup["paper"], setup["press"]
    n = len(inks)
    patches = np.arange(2**n)
    prints = np.array([(patches >> i) % 2 == 1 for i in range(n)])
    areas = np.prod([np.where(prints[i], inks[i]["coverage"], 1 - inks[i]["coverage"]) for i in range(n)], axis=0)
    ln_tack = np.log([ink["tack"] for ink in inks])
    m = paper["evenness"]
    speed = SPEED_POWER * np.log(press["speed"] / 2) - COOLING * (press["temperature"] - 25)
    water = 0.0 if press["waterless"] else WATER_LOSS * press["dampening"]
    ratios, ln_chance = pick_table(m)
    stores = np.eye(n)
    plates = np.zeros((n, 2**n, n))
    blankets = np.zeros((n, 2**n, n))

    def ln_pull(amounts, thickness):
        safe = np.maximum(thickness, 1e-300)
        return amounts @ ln_tack / safe + speed + THINNESS * np.log(2 / safe)

    for _ in range(revolutions):
        layers = np.zeros((n, 2**n, n))  # [layer, patch, ink]
        held = np.zeros((n, 2**n))
        whole = np.ones(2**n)
        for unit in range(n):
            on = prints[unit][:, None]
            film = inks[unit]["film"]
            form = (film * stores[unit] + plates[unit]) / 2
            returned = np.where(on, form, 0)
            brought = np.where(on, (form + blankets[unit]) / 2, blankets[unit])
            plates[unit] = np.where(on, brought, 0)
            x = brought.sum(axis=1)

            below = np.zeros(2**n)
            weights = np.zeros((unit, 2**n))
            for layer in range(unit):
                thick = layers[layer].sum(axis=1)
                seconds = (unit - layer) * press["interval"]
                rise = paper["settingGain"] * (1 - np.exp(-seconds / paper["settingTime"]))
                pull = ln_pull(layers[layer], thick) + np.log1p(rise / (1 + below))
                pull += np.log(1 - water * np.exp(-seconds / WATER_TIME))
                weights[layer] = np.where(thick > 0, np.exp(-m * pull), 0)
                below += thick
            own = np.where(x > 0, np.exp(-m * (ln_pull(brought, x) + np.log(1 - water))), 0)
            total = own + weights.sum(axis=0)
            met = total > 0
            safe = np.where(met, total, 1)

            contact = 1 - np.exp(-paper["contactRate"] * (x + below))
            drops = 0 if press["waterless"] else press["dampening"] * (unit + 1)
            strength = np.log(paper["surfaceStrength"] / (1 + paper["wetLoss"] * drops))
            at = -np.log(safe) / m - strength
            # Below the table the chance falls as the tenth power.
            torn = np.exp(np.interp(at, ratios, ln_chance) + np.minimum(0, PAPER_MODULUS * (at - ratios[0])))
            torn = np.where(met, np.minimum(1, torn), 0)
            breaks = own / safe

            hold = paper["holdLimit"] * (1 - np.exp(-x / paper["holdLimit"]))
            bare = below == 0
            share = np.where(bare, (hold + paper["freeSplit"] * (x - hold)) / np.maximum(x, 1e-300), 0.5)
            taken = contact * (1 - torn) * breaks * share
            gain = brought * taken[:, None]

            lifted = np.zeros((2**n, n))
            broken_below = np.zeros(2**n)
            for layer in range(unit):
                thick = layers[layer].sum(axis=1)
                free = np.maximum(0, thick - held[layer]) / np.maximum(thick, 1e-300)
                leaves = contact * torn + contact * (1 - torn) * (broken_below + weights[layer] / safe * free / 2)
                broken_below += weights[layer] / safe
                lost = layers[layer] * leaves[:, None]
                lifted += lost
                layers[layer] = layers[layer] - lost
                held[layer] *= 1 - contact * torn
            layers[unit] = gain
            held[unit] = np.where(bare, contact * (1 - torn) * hold, 0)
            blankets[unit] = brought - gain + lifted
            whole *= 1 - contact * torn

            store = STORE * stores[unit] - areas[prints[unit]].sum() * film * stores[unit] + areas @ returned
            missing = STORE - store.sum()
            if missing > 0:
                store[unit] += missing
            stores[unit] = store / store.sum()

    films = layers.sum(axis=0)
    traps = [
        films[(1 << early) | (1 << late), late] / films[1 << late, late] for late in range(n) for early in range(late)
    ]
    return {
        "massTraps": traps,
        "contamination": [1 - stores[i][i] for i in range(n)],
        "picking": float(1 - whole.min()),
    }


if __name__ == "__main__":
    task = json.load(sys.stdin)
    settle(task["setUp"], 1)
    start = time.process_time()
    readings = settle(task["setUp"], task["revolutions"])
    print(json.dumps({"readings": readings, "seconds": time.process_time() - start}))
