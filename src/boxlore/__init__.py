"""Boxlore: who, when, where and why, asked of the elders and tied to the print in its box."""

__version__ = "0.1.0"
