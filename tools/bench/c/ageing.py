"""The ageing of brood and bees in numpy, all particles at once, for the record: milliseconds and the sum of all cohorts."""
import sys
import time

import numpy as np

count, days, hatch, seal, flight = (int(one) for one in sys.argv[1:6])
house_loss, field_loss, hatches, seals, emerges = (float(one) for one in sys.argv[6:11])
brood, adults = np.zeros((count, 21)), np.zeros((count, 80))
eggs = 1000.0 + np.arange(count)
kept = np.full(80, np.exp(-house_loss))
kept[flight + 1 :] = np.exp(-field_loss)

begin = time.perf_counter()
for _ in range(days):
    emerging = brood[:, 20] * emerges
    brood[:, 1:] = brood[:, :-1]
    brood[:, 0] = eggs
    brood[:, hatch] *= hatches
    brood[:, seal] *= seals
    oldest = (adults[:, 79] + adults[:, 78]) * kept[79]
    adults[:, 1:] = adults[:, :-1] * kept[1:]
    adults[:, 79] = oldest
    adults[:, 0] = emerging
print((time.perf_counter() - begin) * 1e3, brood.sum() + adults.sum())
