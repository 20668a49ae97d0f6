# Two commands do everything: `make demo` runs the main job, `make test` runs all tests.
SHELL := bash
.SHELLFLAGS := -euo pipefail -c
CARGO ?= cargo
PYTHON ?= python3
PREFIX ?= /usr/local
LIBDIR ?= lib
DESTDIR ?=
PROFILE ?= release
CARGO_FLAGS ?=
# What the Rust tests build beside carb-ffi: with these flags nothing is built again for its sake.
BUILT := -p carb-core -p carb-tests --features carb-core/json --lib --examples
VENV := .venv
CORE_FEATURES := json
SCENARIO ?= docs/scenarios/harbour_ale.json

# Maturin gets a target folder of its own: it and plain cargo rebuild pyo3 for each other otherwise.
MATURIN = CARGO_TARGET_DIR=target/maturin VIRTUAL_ENV=$(CURDIR)/$(VENV) $(VENV)/bin/maturin develop -q -m carb-py/Cargo.toml

.PHONY: demo test test-answers test-rust test-portable test-c test-python test-readme test-notebooks test-package count bench bench-python docs bless clean
.PHONY: install uninstall addin test-sheets

demo: ## Print the packaging plan of the scenario
	@$(CARGO) run -q -p carb-core --features json --example packaging_day -- $(SCENARIO)

test: test-rust docs test-portable test-c test-python test-readme test-notebooks test-answers count ## Everything
	@$(MAKE) --no-print-directory -j2 -O test-sheets test-package # each keeps but one processor busy
	@echo "all tests passed"

test-rust: ## Formatting, lints, and every Rust test
	@$(call timed,formatting and lints,$(CARGO) fmt --all --check && $(CARGO) clippy -q --workspace --all-targets --features carb-core/json -- -D warnings)
	@$(call timed,Rust tests,$(CARGO) test -q --workspace --exclude carb-benches --exclude carb-py --features carb-core/json)

test-portable: ## The core without std, and as a package of its own
	@$(call timed,core without std,$(CARGO) check -q -p carb-core --no-default-features && $(CARGO) check -q -p carb-core --no-default-features --features json)
	@$(call timed,core as a package,$(CARGO) package -q -p carb-core --allow-dirty)

test-c: ## The C face: header, conformance, examples, memory, sanitizers, projects on an installed library
	@$(call timed,C,bash carb-ffi/tests/c.sh)

test-python: $(VENV)/ready ## The Python face
	@$(call timed,building the Python module,$(MATURIN))
	@$(call timed,Python tests,$(VENV)/bin/python -m pytest -q carb-py/tests)

test-sheets: $(VENV)/ready ## The add-in and the workbooks in a real LibreOffice, where there is one
	@if command -v soffice > /dev/null && command -v unopkg > /dev/null; then $(MAKE) -s --no-print-directory addin PROFILE=dev CARGO_FLAGS="$(BUILT)"; \
	  else echo "== spreadsheets: LibreOffice Calc is not here, so the add-in and the workbooks are not tried in it"; fi
	@$(call timed,spreadsheets,$(VENV)/bin/python -m pytest -q -rs carb-sheet/tests)

test-readme: ## The examples of the README, as they stand there
	@$(call timed,README examples,$(VENV)/bin/python tests/readme.py)

test-notebooks: $(VENV)/ready ## The notebooks run, and print what they promise
	@$(call timed,notebooks,$(VENV)/bin/python tests/notebooks.py)

test-package: $(VENV)/ready ## Source distribution, wheel, and the wheel alone in clean environments
	@$(call timed,package,bash tests/package.sh)

test-answers: $(VENV)/ready ## What is answered: workings, balances and cross-checks by scripts of their own, answers by their schema
	@$(call timed,printed workings,$(VENV)/bin/python tests/working.py)
	@$(call timed,schema,$(VENV)/bin/python tests/schema.py)
	@$(call timed,mass balance,$(VENV)/bin/python tests/balance.py)
	@$(call timed,cross-check of invented programs,$(VENV)/bin/python tests/crosscheck.py)

count: ## How many values from outside the project were checked
	@$(CARGO) test -q -p carb-core --features json --test published --test published_bottling --test published_claims \
	  --test reference --test drinks --test kegging_pressure --test kegging_schedule --test kegging_gas \
	  --test kegging_line -- --nocapture \
	  | awk '/outside values checked:/ {n += $$NF} END {print n " values from outside the project were checked"; exit n == 0}'

bench: ## Speed, as ratios measured in one run
	@$(CARGO) bench -q -p carb-benches

bench-python: $(VENV)/ready ## The wheel beside NumPy's formula and other libraries, in one run
	@bash benches/python.sh

docs: ## The reference of the Rust crate
	@$(call timed,Rust documentation,RUSTDOCFLAGS="-D warnings" $(CARGO) doc -q --no-deps -p carb-core --features json)

bless: $(VENV)/ready ## Rewrite what is generated: conformance cases, C header, Python functions, workbooks
	BLESS=1 $(CARGO) test -q -p carb-tests -p carb-ffi
	$(MATURIN)
	$(VENV)/bin/python carb-py/generate.py
	cd carb-sheet && ../$(VENV)/bin/python -m workbook && ../$(VENV)/bin/python -m plain

$(VENV)/ready: requirements.txt
	@$(PYTHON) -m venv $(VENV)
	@$(VENV)/bin/pip install -q --disable-pip-version-check -r requirements.txt
	@touch $@

install uninstall: ## carb.h, libcarb, files for pkg-config and CMake: PREFIX=/usr/local LIBDIR=lib DESTDIR= PROFILE=release
	@PREFIX="$(PREFIX)" LIBDIR="$(LIBDIR)" DESTDIR="$(DESTDIR)" PROFILE="$(PROFILE)" CARGO="$(CARGO)" CARGO_FLAGS="$(CARGO_FLAGS)" bash carb-ffi/install.sh $@

addin: $(VENV)/ready ## target/carb.oxt, the add-in for LibreOffice Calc, with the library inside
	@$(call timed,building the Python module,$(MATURIN))
	@$(call timed,add-in,$(CARGO) build -q --profile $(PROFILE) -p carb-ffi $(CARGO_FLAGS) && \
	  $(VENV)/bin/python carb-sheet/addin/build.py target/$(PROFILE:dev=debug)/libcarb.so target/carb.oxt)

clean:
	rm -rf target $(VENV)

# $(call timed,what,command): runs the command and prints its seconds.
define timed
start=$$SECONDS; echo "== $(1)"; $(2); echo "   $(1): $$((SECONDS - start)) s"
endef
