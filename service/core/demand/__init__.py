"""What is needed of what, and what will be: pure functions over counts.

`cells` the counts as they come from the database · `shares` intervals of shares, trend, pairs · `methods` ways to
foretell counts · `predictive` their distributions · `backtest` which of them foretold best · `stock` expected demand and
reorder points · `tables` the report.
"""
