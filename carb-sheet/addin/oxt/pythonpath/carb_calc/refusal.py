"""What is refused, in a sentence: what was wrong, what is allowed, what to do."""


class Refusal(Exception):
    """No answer. The place is that of the argument at fault, where one is."""

    def __init__(self, text, place=0):
        super().__init__(text)
        self.place = place
