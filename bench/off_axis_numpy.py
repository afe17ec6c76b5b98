"""Off-axis response of a set of pistons with crossover filters, in plain NumPy and SciPy.

Reads a JSON object from standard input: drivers (as in `calc off-axis`), seats [{azimuthDeg, elevationDeg,
distanceM}], frequenciesHz (equal ratios), repeats. Prints versions, the best time for one seat in seconds, and the
curves. Written apart from the TypeScript model, from the same description: a yardstick for speed and a cross-check.
"""

import json
import sys
import time

import numpy as np
import scipy
from scipy.signal import butter, freqs
from scipy.special import j1

SOUND = 343.2
THIRD_OCTAVE = 0.1
SPEECH = np.array(
    [83, 95, 150, 289, 440, 578, 653, 711, 818, 844, 882, 898, 868, 844, 771, 527, 364, 185]
) / 1e4
KERNEL = {"LR2": (1, 2, -1), "LR4": (2, 2, 1), "LR8": (4, 2, 1), "BW2": (2, 1, 1), "BW3": (3, 1, 1)}


def branch(stage, kind, frequency):
    order, cascade, sign = KERNEL[stage["filter"]]
    b, a = butter(order, 2 * np.pi * stage["frequencyHz"], kind, analog=True)
    response = freqs(b, a, worN=2 * np.pi * frequency)[1] ** cascade
    return response * (sign if kind == "high" else 1)


def filters(driver, frequency):
    def stages(name):
        given = driver.get(name, [])
        return given if isinstance(given, list) else [given]

    total = np.ones(len(frequency), complex)
    for stage in stages("lowPass"):
        total *= branch(stage, "low", frequency)
    for stage in stages("highPass"):
        total *= branch(stage, "high", frequency)
    for stage in stages("allPass"):
        total *= branch(stage, "low", frequency) + branch(stage, "high", frequency)
    return total


def pressure(drivers, responses, frequency, point, distance):
    k = 2 * np.pi * frequency / SOUND
    total = np.zeros(len(frequency), complex)
    for driver, response in zip(drivers, responses):
        offset = point - np.array([driver["xM"], driver.get("yM", 0), driver["zM"]])
        r = np.sqrt(offset @ offset)
        x = k * driver["radiusM"] * np.hypot(offset[0], offset[2]) / r
        piston = np.ones_like(x)
        np.divide(2 * j1(x), x, out=piston, where=x > 0)
        total += driver["weight"] * response * piston * (distance / r) * np.exp(-1j * k * (r - distance))
    return total


def running(power):
    return np.concatenate([[0], np.cumsum((power[1:] + power[:-1]) / 2)])


def mean_between(sums, low, high):
    index = np.arange(len(sums))
    low, high = np.maximum(low, 0), np.minimum(high, len(sums) - 1)
    return (np.interp(high, index, sums) - np.interp(low, index, sums)) / (high - low)


def seat_curve(drivers, responses, frequency, seat, reference):
    azimuth, elevation = np.radians(seat["azimuthDeg"]), np.radians(seat.get("elevationDeg", 0))
    distance = seat["distanceM"]
    point = distance * np.array(
        [np.sin(azimuth) * np.cos(elevation), np.cos(azimuth) * np.cos(elevation), np.sin(elevation)]
    )
    power = np.abs(pressure(drivers, responses, frequency, point, distance)) ** 2
    step = np.log10(frequency[-1] / frequency[0]) / (len(frequency) - 1)
    half = THIRD_OCTAVE / step / 2
    ratio = power / reference
    index = np.arange(len(frequency))
    smoothed = mean_between(running(ratio), index - half, index + half)
    centers = np.log10(1000 * 10 ** (np.arange(-8, 10) / 10) / frequency[0]) / step
    on = mean_between(running(reference), centers - half, centers + half)
    off = mean_between(running(power), centers - half, centers + half)
    # The range ends between grid points: both ends are read off in between.
    inside = np.flatnonzero((frequency > 200) & (frequency < 8000))
    ends = np.log10(np.array([200, 8000]) / frequency[0]) / step
    places = np.concatenate([ends, inside])
    levels = np.interp(places, index, smoothed)
    deepest = np.argmin(levels)
    return {
        "levelDb": 10 * np.log10(ratio),
        "dipDb": 10 * np.log10(levels[deepest]),
        "dipHz": frequency[0] * 10 ** (places[deepest] * step),
        "speechLossDb": SPEECH @ (10 * np.log10(on / off)),
    }


def main():
    job = json.load(sys.stdin)
    drivers, seats = job["drivers"], job["seats"]
    frequency = np.array(job["frequenciesHz"])
    responses = [filters(driver, frequency) for driver in drivers]
    references = {}
    for seat in seats:
        distance = seat["distanceM"]
        axis = pressure(drivers, responses, frequency, np.array([0, distance, 0]), distance)
        references[distance] = np.abs(axis) ** 2
    best = np.inf
    for _ in range(job.get("repeats", 1)):
        start = time.process_time()
        curves = [seat_curve(drivers, responses, frequency, s, references[s["distanceM"]]) for s in seats]
        best = min(best, (time.process_time() - start) / len(seats))
    plain = [{key: np.asarray(value).tolist() for key, value in curve.items()} for curve in curves]
    json.dump(
        {"numpy": np.__version__, "scipy": scipy.__version__, "secondsPerSeat": best, "seats": plain}, sys.stdout
    )


main()
