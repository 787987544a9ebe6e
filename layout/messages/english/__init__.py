"""The messages in English."""

from layout.messages.catalogue import Between, Catalogue
from layout.messages.english import sheet, strip

ENGLISH = Catalogue(
    {Between.LIST: "{before}, {after}", Between.SENTENCES: "{before} {after}", **sheet.MESSAGES, **strip.MESSAGES}
)
"""The one catalogue that there is so far."""
