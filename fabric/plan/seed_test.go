package plan_test

import (
	"ellwand/testdata/sample"
)

func init() { sample.Rapid(20) }
