"""What LibreOffice Calc sees of the library: one method for each function of its table, and the companions.

LibreOffice runs this with the Python that it brings along. The work is done by the package `carb_calc`; here its
answers and refusals become what Calc understands.
"""

import unohelper
from carb_calc import companions, functions
from carb_calc.names import FUNCTIONS, TEXTS, plain
from carb_calc.refusal import Refusal
from carb_calc.result import for_calc
from carbcalc import XFunctions
from com.sun.star.lang import IllegalArgumentException, XServiceInfo, XServiceName
from com.sun.star.sheet import XAddIn

NAME = "carb.Calc"
SERVICES = (NAME, "com.sun.star.sheet.AddIn")
CATEGORY = "Add-In"


class Texts(XAddIn, XServiceName, XServiceInfo):
    """Names and texts as every add-in tells them. The document that is handed over counts as the first argument."""

    locale = None

    def getServiceName(self):
        return NAME

    def getImplementationName(self):
        return NAME

    def supportsService(self, name):
        return name in SERVICES

    def getSupportedServiceNames(self):
        return SERVICES

    def setLocale(self, locale):
        self.locale = locale

    def getLocale(self):
        return self.locale

    def getProgrammaticFuntionName(self, display):
        return plain(display.lower())

    def getDisplayFunctionName(self, name):
        return NAMES.get(name, "").upper()

    def getFunctionDescription(self, name):
        return TEXTS[NAMES[name]][0] if name in NAMES else ""

    def getDisplayArgumentName(self, name, place):
        return argument(name, place)[0]

    def getArgumentDescription(self, name, place):
        return argument(name, place)[1]

    def getProgrammaticCategoryName(self, name):
        return CATEGORY

    def getDisplayCategoryName(self, name):
        return CATEGORY


def argument(name, place):
    """Name and text of an argument."""
    known = TEXTS[NAMES[name]][1] if name in NAMES else []
    return known[place - 1] if 1 <= place <= len(known) else ("", "")


def method(call):
    """A function as Calc calls it: what is left out at the end is not there, what is refused is a cell error."""

    def answer(self, *arguments):
        while arguments and arguments[-1] is None:
            arguments = arguments[:-1]
        try:
            return for_calc(call(*arguments))
        except Refusal as refusal:
            raise IllegalArgumentException(str(refusal), self, refusal.place) from None

    return answer


CALLS = {**{name: functions.of(name) for name in FUNCTIONS}, **companions.CALLS}
NAMES = {plain(name): name for name in CALLS}
Calc = type("Calc", (unohelper.Base, Texts, XFunctions), {plain(name): method(CALLS[name]) for name in CALLS})
Calc.__init__ = lambda self, *context: None

g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Calc, NAME, SERVICES)
