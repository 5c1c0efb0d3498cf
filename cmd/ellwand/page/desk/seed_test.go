package desk

import "ellwand/testdata/sample"

func init() { sample.Rapid(100) }
