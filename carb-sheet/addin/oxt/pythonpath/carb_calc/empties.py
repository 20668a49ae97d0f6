"""An empty cell is missing, not 0."""


def filled(caller, function, arguments):
    return arguments
