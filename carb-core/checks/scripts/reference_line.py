"""Write ../reference/friction.csv, line_flow.csv and line_resistance.csv: flow in tubes by general libraries.

    pip install CoolProp fluids scipy numpy
    python3 reference_line.py

Nothing here comes from carb-core. fluids gives the friction factors (Colebrook solved exactly, and its own Churchill 1977),
CoolProp the density and viscosity of water, scipy the root of the balance of energy, which is written out here.
"""

from importlib.metadata import version
from math import pi
from pathlib import Path

from CoolProp.CoolProp import PropsSI
from fluids.friction import Churchill_1977, Colebrook
from scipy.optimize import brentq

FOLDER = Path(__file__).resolve().parent.parent / "reference"
ROUGHNESS = 1.5e-6
PSI_PER_FOOT = 6894.757293168 / 0.3048
OUNCE = 29.5735295625e-6
INCH = 0.0254


def write(name, what, libraries, columns, rows):
    versions = ", ".join(f"{library} {version(library)}" for library in libraries.split())
    with open(FOLDER / name, "w", encoding="utf-8", newline="\n") as file:
        file.write(f"# {what}\n")
        file.write(f"# From {versions}. Regenerate: python3 ../scripts/reference_line.py\n")
        file.write(",".join(columns) + "\n")
        for row in rows:
            file.write(",".join(f"{value:.10g}" for value in row) + "\n")


def factors():
    for relative in (0.0, 1e-5, 1e-4, 3e-4, 1e-3, 2e-3):
        for reynolds in (50, 200, 500, 1000, 1500, 1900, 2000):
            # Below the transition the reference is Hagen and Poiseuille's law.
            yield reynolds, relative, 64 / reynolds, Churchill_1977(reynolds, relative)
        for reynolds in (4000, 4500, 5000, 6000, 8000, 1e4, 1.5e4, 2.5e4, 5e4, 1e5, 3e5, 1e6):
            yield reynolds, relative, Colebrook(reynolds, relative), Churchill_1977(reynolds, relative)


def factor(reynolds, relative):
    return 64 / reynolds if reynolds < 2000 else Colebrook(reynolds, relative)


def flows():
    for celsius in (2, 8, 20, 30):
        density = PropsSI("D", "T", celsius + 273.15, "P", 1e5, "Water")
        viscosity = PropsSI("V", "T", celsius + 273.15, "P", 1e5, "Water")
        for millimetres, metres, bar, rise, heads in (
            (4.7625, 3.0, 0.8, 0.6, 3.0), (4.7625, 1.2, 0.7, 0.0, 0.0), (6.35, 6.0, 0.9, 1.0, 3.0),
            (6.35, 30.0, 2.5, -0.5, 5.0), (7.0, 10.0, 1.2, 2.0, 1.0), (9.525, 40.0, 1.5, 3.0, 2.0),
            (10.0, 100.0, 2.8, 0.0, 10.0), (12.7, 60.0, 1.0, 0.5, 3.0), (4.0, 0.4, 0.76, 0.0, 3.0),
            (3.0, 8.0, 0.15, 0.2, 3.0), (2.0, 6.0, 0.25, 0.0, 1.0), (4.7625, 30.0, 0.1, 0.3, 3.0), (1.5, 1.0, 0.3, 0.1, 0.0),
        ):
            bore = millimetres / 1000
            head = bar * 1e5 - density * 9.80665 * rise

            def left(speed):
                f = factor(density * speed * bore / viscosity, ROUGHNESS / bore)
                return head - (f * metres / bore + heads) * density * speed**2 / 2

            for low, high in ((1e-6, 1999.9 * viscosity / density / bore), (4000.1 * viscosity / density / bore, 50.0)):
                if left(low) > 0 > left(high):
                    speed = brentq(left, low, high, xtol=1e-15, rtol=1e-14)
                    flow = pi / 4 * bore**2 * speed * 60000
                    yield celsius, bar, metres, millimetres, rise, heads, density * speed * bore / viscosity, flow


def resistances():
    density, viscosity = 1010.0, 0.00251
    steel = [outer - 0.07 for outer in (0.25, 0.3125, 0.375)]
    for inches in (3 / 16, 1 / 4, 5 / 16, 3 / 8, *steel):
        bore = inches * INCH
        for ounces in (4 / 3, 2.0):
            speed = ounces * OUNCE / (pi / 4 * bore**2)
            reynolds = density * speed * bore / viscosity
            lost = Colebrook(reynolds, ROUGHNESS / bore) * density * speed**2 / (2 * bore)
            yield inches, ounces, reynolds, lost / PSI_PER_FOOT


write("friction.csv", "Friction factors of tubes: 64/Re to a Reynolds number of 2000, Colebrook from 4000; and Churchill 1977.",
      "fluids", ["reynolds", "relative_roughness", "factor", "churchill"], factors())
write("line_flow.csv", "Water through a line: where the flow is laminar (64/Re) or turbulent (Colebrook).", "CoolProp fluids scipy",
      ["temperature_c", "gauge_bar", "line_m", "bore_mm", "rise_m", "fittings_multiplier", "reynolds", "flow_l_per_min"], flows())
write("line_resistance.csv", "A drink of 1010 kg/m3 and 2.51 mPa s by Colebrook's equation, also in the transition.", "fluids",
      ["bore_in", "us_fl_oz_per_s", "reynolds", "psi_per_ft"], resistances())
