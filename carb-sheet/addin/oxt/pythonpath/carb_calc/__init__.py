"""The functions of the library for a spreadsheet: arguments as cells give them, answers as cells show them."""
