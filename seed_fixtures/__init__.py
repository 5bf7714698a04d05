"""An invented maker: catalogue, hull models, fleet and enquiries for the demo and the tests.

    catalogue.toml   gears, shafts, brackets, parts, ways of measuring, rules and priors
    hulls.csv        forty hull models of ten yards, near-namesakes among them
    fleet.jsonl      six hundred installations, 2001 to 2025; made by `python -m seed_fixtures.generate`
    enquiries/       mails of every sort; demo.eml is the one answered where none is given

How the fleet comes about: `truth` draws what every hull model is like and how sister ships depart from it, `things`
puts ladders, stays and rails on them, `ways` and `arithmetic` do a fitter's sums on true boats, `habits` says what is
liked and chosen, `notebook` what of it is written down and how wrongly, `generate` puts it together.

Nothing here imports the service: what it is tried on was not chosen by it. Every person, firm, boat and number is
invented.
"""
