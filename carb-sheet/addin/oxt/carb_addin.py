"""What LibreOffice Calc sees of the library: one method for each function of its table, and the companions.

LibreOffice runs this with the Python that it brings along. The work is done by the package `carb_calc`; here its answers
and refusals become what Calc understands.
"""

import unohelper
from carb_calc import companions, functions
from carb_calc.names import FUNCTIONS
from carb_calc.refusal import Refusal
from carb_calc.result import for_calc
from carbcalc import XFunctions
from com.sun.star.lang import IllegalArgumentException, XServiceInfo, XServiceName
from com.sun.star.sheet import XAddIn

NAME = "carb.Calc"
SERVICES = (NAME, "com.sun.star.sheet.AddIn")


class Texts(XAddIn, XServiceName, XServiceInfo):
    """Names and texts as every add-in tells them; Calc takes the texts from CalcAddIns.xcu."""

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
        return PLAIN.get(display.lower(), "")

    def getDisplayFunctionName(self, name):
        return next((spelled.upper() for spelled, plain in PLAIN.items() if plain == name), "")

    def getFunctionDescription(self, name):
        return ""

    def getDisplayArgumentName(self, name, place):
        return ""

    def getArgumentDescription(self, name, place):
        return ""

    def getProgrammaticCategoryName(self, name):
        return "Add-In"

    def getDisplayCategoryName(self, name):
        return "Add-In"


def method(call):
    """A function as Calc calls it: what is refused is a cell error."""

    def answer(self, *arguments):
        try:
            return for_calc(call(*arguments))
        except Refusal as refusal:
            raise IllegalArgumentException(str(refusal), self, refusal.place) from None

    return answer


CALLS = {name: functions.of(name) for name in FUNCTIONS} | companions.CALLS
PLAIN = {name: name.replace("_", "") for name in CALLS}
Calc = type("Calc", (unohelper.Base, Texts, XFunctions), {PLAIN[name]: method(call) for name, call in CALLS.items()})
Calc.__init__ = lambda self, *context: None

g_ImplementationHelper = unohelper.ImplementationHelper()
g_ImplementationHelper.addImplementation(Calc, NAME, SERVICES)
