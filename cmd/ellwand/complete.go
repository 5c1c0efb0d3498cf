package main

import (
	"strings"

	"github.com/spf13/cobra"

	"ellwand/cmd/ellwand/job"
	"ellwand/fabric/plan"
	"ellwand/pieces/paper"
)

// completions teach the shell the values of options and where job files stand.
func completions(root *cobra.Command) {
	values := map[string]cobra.CompletionFunc{
		"lay": fixed(layShortNames), "cloth": clothsOfJob, "offer": offersOfJob, "effort": fixed(effortNames),
		"paper": func(cmd *cobra.Command, _ []string, _ string) ([]string, cobra.ShellCompDirective) {
			if cmd.Name() == "print" || cmd.Name() == "marker" {
				return paper.Names(), cobra.ShellCompDirectiveNoFileComp
			}
			return []string{"a4", "letter"}, cobra.ShellCompDirectiveNoFileComp
		},
	}
	for _, cmd := range root.Commands() {
		for name, complete := range values {
			if cmd.Flags().Lookup(name) != nil {
				_ = cmd.RegisterFlagCompletionFunc(name, complete) // fails only for a flag that there is not
			}
		}
		if strings.Contains(cmd.Use, " JOB") && cmd.ValidArgsFunction == nil {
			cmd.ValidArgsFunction = func(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
				if len(args) > 0 {
					return nil, cobra.ShellCompDirectiveNoFileComp
				}
				return []string{"yaml", "yml"}, cobra.ShellCompDirectiveFilterFileExt
			}
		}
	}
}

func effortNames() []string {
	var out []string
	for _, e := range plan.Efforts() {
		out = append(out, e.String())
	}
	return out
}

func fixed(names func() []string) cobra.CompletionFunc {
	return func(*cobra.Command, []string, string) ([]string, cobra.ShellCompDirective) {
		return names(), cobra.ShellCompDirectiveNoFileComp
	}
}

// clothsOfJob are the cloths of the job on the command line, if it can be read.
func clothsOfJob(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	var out []string
	for _, cloth := range clothsIn(args) {
		out = append(out, string(cloth.Name))
	}
	return out, cobra.ShellCompDirectiveNoFileComp
}

// offersOfJob are the offers of all its cloths.
func offersOfJob(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
	var out []string
	for _, cloth := range clothsIn(args) {
		for _, offer := range cloth.Offers {
			out = append(out, string(offer.Name))
		}
	}
	return out, cobra.ShellCompDirectiveNoFileComp
}

func clothsIn(args []string) []job.Cloth {
	if len(args) == 0 {
		return nil
	}
	file, err := job.Read(args[0])
	if err != nil {
		return nil
	}
	return file.Cloths
}
