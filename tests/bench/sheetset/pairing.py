"""Joins the flags of all sheets in pairs, an outgoing with an incoming one on another sheet, and words them."""


def pair_flags(layouts, rng, flag_length):
    """Numbers all flags and sets text, target and label. Returns pairs of flag numbers.

    No two pairs join the same two zones of the same two sheets, so every reference has exactly one mate.
    """
    place, outs, ins = {}, [], []
    number = 0
    for layout in layouts:
        for flag in layout.flags():
            number += 1
            flag.number = number
            place[number] = (layout.number, flag.zone(flag_length))
            (outs if flag.flow == "out" else ins).append(flag)
    # neighbours on the list are near each other in the set, as lines mostly lead to near sheets
    near = min(12, len(layouts))
    outs.sort(key=lambda f: place[f.number][0] + rng.uniform(0, near))
    ins.sort(key=lambda f: place[f.number][0] + rng.uniform(0, near))
    _settle(outs, ins, place, rng)
    for n, (one, other) in enumerate(zip(outs, ins)):
        label = f"L-{1001 + n}" if rng.random() < 0.75 else ""
        for flag, mate in ((one, other), (other, one)):
            flag.target = place[mate.number]
            flag.text = "{}/{}".format(*flag.target)
            flag.label = label
    return [(one.number, other.number) for one, other in zip(outs, ins)]


def _settle(outs, ins, place, rng):
    """Swaps incoming flags until no pair stays on its sheet and no two pairs are alike."""
    count = {}

    def key(k):
        return tuple(sorted((place[outs[k].number], place[ins[k].number])))

    def bad(k):
        (a, _), (b, _) = key(k)
        return a == b or count[key(k)] > 1

    for k in range(len(outs)):
        count[key(k)] = count.get(key(k), 0) + 1
    for _ in range(200):
        wrong = [k for k in range(len(outs)) if bad(k)]
        if not wrong:
            return
        for k in wrong:
            reach = 200
            other = rng.randrange(max(0, k - reach), min(len(outs), k + reach))
            for n in {k, other}:
                count[key(n)] -= 1
            ins[k], ins[other] = ins[other], ins[k]
            for n in {k, other}:
                count[key(n)] = count.get(key(n), 0) + 1
    raise RuntimeError("no consistent pairing found")
