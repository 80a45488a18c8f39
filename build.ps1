#!/usr/bin/env pwsh
<#
The project's tasks. Run it under the local PowerShell tool:

    dotnet tool restore
    dotnet pwsh build.ps1 [target ...]

Without a target it lists them. The line of comment above each target is its description.
#>
param([Parameter(ValueFromRemainingArguments)] [string[]] $Targets)

Set-StrictMode -Version Latest
$ErrorActionPreference = 'Stop'
Set-Location $PSScriptRoot

function Invoke-Tool {
    & dotnet @args
    if ($LASTEXITCODE -ne 0) { throw "dotnet $($args -join ' ') ended with $LASTEXITCODE" }
}

# Builds everything; warnings are errors.
function Invoke-Build { Invoke-Tool build PatternPress.sln --nologo }

# Runs the tests.
function Invoke-Test { Invoke-Tool test PatternPress.sln --nologo }

# Formats all C# files.
function Invoke-Format { Invoke-Tool csharpier format . }

# Checks every pattern without writing anything.
function Invoke-Check { Invoke-Tool run -c Release --project src/PatternPress.Cli -- check patterns }

# Builds the PDFs of every pattern into out/.
function Invoke-Patterns { Invoke-Tool run -c Release --project src/PatternPress.Cli -- build patterns }

# Takes the received outputs of the golden tests as the expected ones.
function Invoke-Accept {
    $env:PATTERNPRESS_ACCEPT = '1'
    try { Invoke-Tool test tests/PatternPress.Tests --nologo } finally { $env:PATTERNPRESS_ACCEPT = $null }
}

# Writes the JSON Schema of the source language, for editors, to out/.
function Invoke-Schema {
    New-Item -ItemType Directory -Force out | Out-Null
    Invoke-Tool run -c Release --project src/PatternPress.Cli -- schema --output out/quilt.schema.json
}

# Publishes the program for this machine, compiled ahead of time, to out/program/ (on Linux this takes clang or gcc).
function Invoke-Publish {
    Invoke-Tool publish src/PatternPress.Cli -p:PublishAot=true -o out/program --nologo
}

# Prints the benchmarks: cutting plans, cold check, full build.
function Invoke-Bench { Invoke-Tool run -c Release --project tests/PatternPress.Benchmarks }

# Removes what builds leave behind.
function Invoke-Clean {
    Get-ChildItem -Recurse -Directory -Include bin, obj | Remove-Item -Recurse -Force
    Remove-Item -Recurse -Force out -ErrorAction SilentlyContinue
}

# What CI does: format check, build, tests, all patterns.
function Invoke-CI {
    Invoke-Tool csharpier check .
    Invoke-Build
    Invoke-Test
    Invoke-Patterns
}

$lines = Get-Content $PSCommandPath
$known = [ordered]@{}
for ($i = 1; $i -lt $lines.Count; $i++) {
    if ($lines[$i] -match '^function Invoke-(\w+)' -and $lines[$i - 1] -match '^# (.*)') {
        $null = $lines[$i] -match '^function Invoke-(\w+)'
        $target = $Matches[1].ToLowerInvariant()
        $null = $lines[$i - 1] -match '^# (.*)'
        $known[$target] = $Matches[1]
    }
}

if (-not $Targets) {
    Write-Output 'Targets:'
    foreach ($target in $known.Keys) { Write-Output ('  {0,-9} {1}' -f $target, $known[$target]) }
    exit 0
}

foreach ($target in $Targets) {
    if (-not $known.Contains($target)) {
        Write-Error "There is no target '$target'. Run build.ps1 without one to list them." -ErrorAction Continue
        exit 2
    }
}
foreach ($target in $Targets) { & "Invoke-$target" }
