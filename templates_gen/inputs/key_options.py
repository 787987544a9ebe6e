"""An option that says what a key of the kit file would say."""

from __future__ import annotations

from typing import Any

from layout.kit.fields import read_field
from layout.kit.inputs import BY_KEY
from layout.values.errors import FieldError
from templates_gen.lettering.fonts import metrics
from templates_gen.messages.errors import OptionError


def as_key(key: str, option: str, text: str, example: str) -> Any:
    """What the `key` would be with this text; OptionError naming the `option`, with an `example` that works."""
    try:
        return read_field(BY_KEY[key], text, option, metrics())
    except FieldError as error:
        raise OptionError(option, error.needed, error.got, example) from None
