"""What every test may ask for, and how Hypothesis runs here."""

from __future__ import annotations

import pytest
from hypothesis import settings

from layout.drawing.metrics import FontMetrics
from layout.plan import Plan, plan
from templates_gen.inputs import kit_file as kitfile
from templates_gen.lettering import fonts

settings.register_profile("steady", deadline=None)  # a busy machine is no fault of the code
settings.load_profile("steady")


@pytest.fixture(scope="session")
def metrics() -> FontMetrics:
    """The measures of the print font."""
    return fonts.metrics()


@pytest.fixture(scope="session")
def demo_plan() -> Plan:
    """The plan of the built-in demo kit."""
    return plan(kitfile.demo())
