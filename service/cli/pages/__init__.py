"""What people see: one page a result, made from the published value and nothing else."""
