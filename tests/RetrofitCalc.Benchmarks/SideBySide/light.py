"""Light of tubes over a bench with NumPy: what an analyst would write from E-50 and E-59. Reads what the benchmark wrote.

tubes.csv: one row for each tube: 1 for a bare tube else 0, length, output, height, x, y, axis in degrees.
points.csv: one row for each point: x, y.  box.csv: length, width, height, then reflectances of base, sides, top.
Prints for each way processor seconds and the sum of the light: as the formula stands, with one arc for both ends, and with reflections.
"""

import sys
import time

import numpy as np

folder, runs = sys.argv[1], int(sys.argv[2])
tubes = np.loadtxt(f"{folder}/tubes.csv", delimiter=",", ndmin=2)
x, y = np.ascontiguousarray(np.loadtxt(f"{folder}/points.csv", delimiter=",").T)
box = np.loadtxt(f"{folder}/box.csv", delimiter=",")


def beside(tube, px, py):
    turn = np.radians(tube[6])
    east, north = px - tube[4], py - tube[5]
    return east * np.cos(turn) + north * np.sin(turn), north * np.cos(turn) - east * np.sin(turn)


def seen(angle):
    return 0.5 * (angle + np.sin(angle) * np.cos(angle))


def as_it_stands(tube, px, py):
    bare, length, output, h = tube[:4]
    along, across = beside(tube, px, py)
    away = np.sqrt(across**2 + h**2)
    both = seen(np.arctan((length / 2 - along) / away)) - seen(np.arctan((-length / 2 - along) / away))
    return output / (np.pi**2 * length) * h / away**2 * both if bare else output / (np.pi * length) * h**2 / away**3 * both


def one_arc(tube, px, py):
    bare, length, output, h = tube[:4]
    along, across = beside(tube, px, py)
    square = across * across + h * h
    away = np.sqrt(square)
    ends = along * along - length * length / 4
    p, q = square + ends, length * away
    both = 0.5 * (np.arctan2(q, p) + q * (square - ends) / (p * p + q * q))
    return output / (np.pi**2 * length) * h / square * both if bare else output / (np.pi * length) * h * h / (square * away) * both


def field(one, px, py):
    light = np.zeros_like(px)
    for tube in tubes:
        light += one(tube, px, py)
    return light


def exchange(length, width, height):
    a, b = length / height, width / height
    aa, bb = np.sqrt(1 + a * a), np.sqrt(1 + b * b)
    return 2 / (np.pi * a * b) * (np.log(aa * aa * bb * bb / (1 + a * a + b * b)) / 2 + a * bb * np.arctan(a / bb)
                                  + b * aa * np.arctan(b / aa) - a * np.arctan(a) - b * np.arctan(b))


def reflected(one):
    length, width, height, base, sides, top = box
    nodes, weights = np.polynomial.legendre.leggauss(64)
    px, py = (grid.ravel() for grid in np.meshgrid(nodes * length / 2, nodes * width / 2))
    area = np.outer(weights * width / 2, weights * length / 2).ravel()
    first = np.zeros(3)
    for tube in tubes:
        up = tube[2] / 2 if tube[0] else 0.0
        down = min(one(tube, px, py) @ area, tube[2] - up)
        first += down, tube[2] - up - down, up
    f = exchange(length, width, height)
    level = (1 - f) * length * width / (2 * height * (length + width))
    lost = np.array([[1, -sides * level, -top * f], [-base * (1 - f), 1 - sides * (1 - 2 * level), -top * (1 - f)], [-base * f, -sides * level, 1]])
    return (np.linalg.solve(lost, first)[0] - first[0]) / (length * width)


def timed(work):
    total = work().sum()
    begin = time.process_time()
    for _ in range(runs):
        work()
    print(f"{(time.process_time() - begin) / runs:.9f} {total:.9g}")


timed(lambda: field(as_it_stands, x, y))
timed(lambda: field(one_arc, x, y))
timed(lambda: field(as_it_stands, x, y) + reflected(as_it_stands))
