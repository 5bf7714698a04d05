"""An invented maker: catalogue, hull models, fleet and enquiries for the demo and the tests."""
