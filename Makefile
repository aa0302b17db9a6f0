# Each target sets up whatever it needs first; `make` alone lists them.

PATTERN ?= projects/samphire
SECONDS ?= 60
VENV := .venv
READY := $(VENV)/.ready
# Homebrew keeps its libraries where macOS does not look by itself.
LIBRARY_PATH := $(if $(filter Darwin,$(shell uname -s)),DYLD_FALLBACK_LIBRARY_PATH=/opt/homebrew/lib:/usr/local/lib:/usr/lib)
PYTHON_IN := $(LIBRARY_PATH) $(VENV)/bin/python

# A checkout that was moved is set up again: scripts in .venv name the folder they are in.
ifneq ($(shell cat $(READY) 2>/dev/null),$(CURDIR))
.PHONY: $(READY)
endif

.PHONY: help setup booklet test times thorough fuzz kills mutate lint types check reference lock clean

help:
	@echo 'make booklet    build every deliverable of $(PATTERN) into build/'
	@echo 'make test       run the tests'
	@echo 'make times      measure which tests take long, and leave those to make thorough'
	@echo 'make thorough   run the tests that take long as well'
	@echo 'make fuzz       try inputs that are nearly right for SECONDS=60'
	@echo 'make kills      kill 100 runs at random moments: is the folder of results whole?'
	@echo 'make mutate     put 120 faults into copies of the program: which do the tests notice?'
	@echo 'make lint       check style            make types   check types'
	@echo 'make check      style, types and tests'
	@echo 'make reference  write REFERENCE.md, CHECKS.md and the schemas again'
	@echo 'make lock       choose package versions again'
	@echo 'make clean      remove what was built and installed here'
	@echo 'Another pattern: make booklet PATTERN=projects/NAME'

$(READY): requirements.lock pyproject.toml .ci/setup
	@sh .ci/setup

setup: $(READY)
	@:

booklet: $(READY)
	@$(PYTHON_IN) -m publish build $(PATTERN)

# A file's tests run in one process, so that what they share is made once; the longest first.
test: $(READY)
	@$(PYTHON_IN) -m pytest -n 2 --dist loadfile --no-loadscope-reorder

times: $(READY)
	@PYTHONPATH=tests $(PYTHON_IN) -m pytest -p times -n 2 --dist loadfile -m 'thorough or not thorough'

thorough: $(READY)
	@$(PYTHON_IN) -m pytest -n 2 -m 'thorough or not thorough'

fuzz: $(READY)
	@$(PYTHON_IN) tests/fuzz/run.py $(SECONDS)

kills: $(READY)
	@$(PYTHON_IN) tests/kills.py

# About an hour on two cores.
mutate: $(READY)
	@$(PYTHON_IN) tests/mutation/run.py --count 120 --workers 2

lint: $(READY)
	@$(VENV)/bin/python -m ruff check .
	@$(VENV)/bin/python -m ruff format --check .

types: $(READY)
	@$(VENV)/bin/python -m mypy

check: lint types test

reference: $(READY)
	@$(PYTHON_IN) -m publish reference --out projects

# Versions for every supported Python and system at once; needs `uv` on the PATH.
lock:
	uv pip compile pyproject.toml --extra dev --universal --python-version 3.11 \
	    --generate-hashes --no-header --no-annotate --no-emit-index-url --upgrade \
	    --quiet --output-file requirements.lock

clean:
	rm -rf build $(VENV) .mypy_cache .pytest_cache .ruff_cache foldwork.egg-info
	find publish tests -name __pycache__ -prune -exec rm -rf {} +
