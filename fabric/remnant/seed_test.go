package remnant_test

import "ellwand/testdata/sample"

func init() { sample.Rapid(20) }
