fn x() {}
