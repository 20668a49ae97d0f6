"""What is refused, in a sentence: what was wrong, what is allowed, what to do."""


class Refusal(Exception):
    """No answer. The place is that of the argument at fault, where one is. Where there is none because what holds the drink
    would burst, that is a danger."""

    def __init__(self, text, place=0, danger=False):
        super().__init__(text)
        self.place, self.danger = place, danger

    def told(self):
        """What a companion says of it."""
        return f"DANGER: {self}" if self.danger else f"Error: {self}"
