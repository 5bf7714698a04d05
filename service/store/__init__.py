"""The only place that speaks SQL, and the only one that commits."""
