"""Random inputs. They have four digits, so that they read well and are the same on every machine."""


def even(random, low, high):
    """A number between two, all equally likely."""
    return four_digits(random.uniform(low, high))


def log(random, low, high):
    """A number between two above zero, every factor equally likely."""
    return four_digits(low * (high / low) ** random.uniform())


def four_digits(number):
    return float(f"{number:.4g}")
