"""A choice taken by its number, which stands before it on the screen and in the plain sitting."""

from collections.abc import Sequence
from typing import TypeVar

from boxlore.core.errors import WrongUse

Choice = TypeVar("Choice")


def numbered(choices: Sequence[Choice], number: int) -> Choice:
    """The choice of that number, from 1. Raises WrongUse for a number that no choice has."""
    if not 1 <= number <= len(choices):
        raise WrongUse("There is no choice of that number.", f"Write a number from 1 to {len(choices)}.")
    return choices[number - 1]
